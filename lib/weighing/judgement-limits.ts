// Limits inside judgements: what two materials may reach together, and what a class may not exceed beside another.
// A class rule speaks only when both its sides are above their thresholds, so holding one side down is enough.
import type { Composition } from '../composition/compose.ts';
import type { Book } from '../rulebook/book.ts';
import type { ClassRule, ClassSide } from '../rulebook/judgement.ts';
import { exceedsPpm, WHOLE_PPM } from '../units/share.ts';
import { classPart } from '../verdict/check-classes.ts';
import type { PairRuling } from '../verdict/pair-verdict.ts';
import { isPairAdded, pairRulings } from '../verdict/pair-verdict.ts';
import type { LineContent } from './line-content.ts';
import { byMaterial, shareLimit } from './line-content.ts';
import type { MassLimit } from './mass-limit.ts';

export const judgementLimits = (book: Book, contents: readonly LineContent[], jar: Composition): readonly MassLimit[] => [
  ...pairLimits(book, contents, jar),
  ...classLimits(book, contents, jar),
];

function pairLimits(book: Book, contents: readonly LineContent[], jar: Composition): readonly MassLimit[] {
  const ids = [...jar.materials].flatMap(([id, held]) => (held > 0n ? [id] : [])).sort();
  return ids.flatMap((a, index) =>
    ids.slice(index + 1).flatMap((b) => {
      const rulings = pairRulings(book, a, b, isPairAdded(jar, a, b));
      return rulings === 'judged-with-the-base' ? [] : rulings.flatMap((ruling) => rulingLimits(book, contents, ruling));
    }),
  );
}

function rulingLimits(book: Book, contents: readonly LineContent[], ruling: PairRuling): readonly MassLimit[] {
  const { firstMaterialId: first, secondMaterialId: second, limit } = ruling;
  if (ruling.verdict !== 'limit' || !limit) return [];
  const most = (
    code: 'pair-limit-sum' | 'pair-limit-first' | 'pair-limit-second',
    materialIds: readonly string[],
    limitPpm: number | undefined,
  ) => {
    if (limitPpm === undefined) return [];
    const head = { id: `${code}:${ruling.ruleId}:${first}|${second}`, code, basis: 'judgement', direction: 'at-most' } as const;
    const weight = byMaterial(book, ({ id }) => (materialIds.includes(id) ? WHOLE_PPM : 0));
    return [shareLimit(book, contents, head, { weight, limitPpm })];
  };
  return [
    ...most('pair-limit-sum', [first, second], limit.maxSumPpm),
    ...most('pair-limit-first', [first], limit.maxFirstPpm),
    ...most('pair-limit-second', [second], limit.maxSecondPpm),
  ];
}

/**
 * One limit per refusing rule that the recipe passes by a threshold: the side under its threshold (with both under, the one
 * that is further under). A rule passed by its pH alone gives none: pH is asked again of the jar as weighed.
 */
const classLimits = (book: Book, contents: readonly LineContent[], jar: Composition): readonly MassLimit[] =>
  book.rulebook.classRules.flatMap((rule) => {
    const side = rule.then.kind === 'refuse' ? sideToHold(book, jar, rule) : null;
    if (!side) return [];
    const head = { id: `class-rule:${rule.id}`, code: 'class-rule', basis: 'judgement', direction: 'at-most' } as const;
    const weight = byMaterial(book, ({ classes }) => (classes.includes(side.materialClass) ? WHOLE_PPM : 0));
    return [shareLimit(book, contents, head, { weight, limitPpm: side.abovePpm })];
  });

function sideToHold(book: Book, jar: Composition, rule: ClassRule): ClassSide | null {
  const sides = [rule.first, ...(rule.second ? [rule.second] : [])].map((side) => ({
    side,
    found: classPart(book, jar, side.materialClass),
  }));
  // A class that is not in the jar at all cannot come into it by weighing.
  if (sides.some(({ found }) => found === 0n)) return null;
  const [first, second] = sides.filter(({ side, found }) => !exceedsPpm(found, jar.whole, side.abovePpm));
  if (!first || !second) return first?.side ?? null;
  const isFirstFuller = first.found * BigInt(second.side.abovePpm) > second.found * BigInt(first.side.abovePpm);
  return isFirstFuller ? second.side : first.side;
}
