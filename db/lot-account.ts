// What a jar took from which lot, replayed from its facts. One definition for the moment of writing and for the check years later.
import { assertNever, invariant } from '#lib/base/invariant.ts';
import type { MassUg } from '#lib/units/mass.ts';

export type LotFact =
  | {
      readonly kind: 'reading';
      readonly factNo: number;
      readonly id: string;
      readonly lineNo: number;
      readonly weighingNo: number;
      readonly lotId: string;
      readonly massUg: MassUg;
    }
  | { readonly kind: 'void'; readonly factNo: number; readonly readingId: string; readonly hadLeftLot: boolean }
  | { readonly kind: 'take'; readonly factNo: number; readonly lotId: string; readonly massUg: MassUg };

type ReadingFact = Extract<LotFact, { kind: 'reading' }>;

/** The reading that stands for the same weighing as another, among those not voided. */
const standing = (valid: readonly ReadingFact[], like: ReadingFact): ReadingFact | undefined =>
  valid.findLast((one) => one.lineNo === like.lineNo && one.weighingNo === like.weighingNo);

/**
 * Mass that left each lot, in µg. Of one weighing the last reading counts. A voided reading gives its part back, unless the stuff had
 * left the lot all the same.
 * @param facts in order of factNo
 */
export function massTakenByLot(facts: readonly LotFact[]): ReadonlyMap<string, number> {
  const taken = new Map<string, number>();
  const add = (from: { readonly lotId: string; readonly massUg: number } | undefined, times: 1 | -1): void => {
    if (from) taken.set(from.lotId, (taken.get(from.lotId) ?? 0) + times * from.massUg);
  };
  const valid: ReadingFact[] = [];
  for (const fact of facts) {
    switch (fact.kind) {
      case 'take':
        add(fact, 1);
        break;
      case 'reading':
        add(standing(valid, fact), -1);
        add(fact, 1);
        valid.push(fact);
        break;
      case 'void': {
        const voided = valid.find((one) => one.id === fact.readingId);
        invariant(voided, `a void of no standing reading: ${fact.readingId}`);
        const stood = standing(valid, voided) === voided;
        valid.splice(valid.indexOf(voided), 1);
        if (!stood || fact.hadLeftLot) break;
        add(voided, -1);
        add(standing(valid, voided), 1);
        break;
      }
      default:
        assertNever(fact);
    }
  }
  return taken;
}
