// The decision at the end of the bench: what was really weighed is judged once more, with the measured pH. Released, or held with the reasons;
// what is held is decided later by two people. Either way the label is made now and never changes.
import type { Reading, Writing } from '#db/connection.ts';
import type { LotState } from '#db/lots.ts';
import { insertRelease } from '#db/releases.ts';
import { freeReservations } from '#db/reservations.ts';
import { canonicalJson } from '#lib/base/canonical-json.ts';
import type { Finding } from '#lib/base/finding.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import { baseShiftX100 } from '#lib/chemistry/jar-ph.ts';
import { compose } from '#lib/composition/compose.ts';
import { parseBatchCode } from '#lib/label/batch-code.ts';
import { labelFit } from '#lib/label/label-fit.ts';
import type { Book } from '#lib/rulebook/book.ts';
import { need } from '#lib/rulebook/book.ts';
import { judgeWeighed } from '#lib/verdict/judge.ts';
import { weighedAmounts } from '#lib/weighing/release-jar.ts';
import type { BenchAsked, BenchDecision } from './bench-act.ts';
import { actAtBench, stoppedBy } from './bench-act.ts';
import type { BenchOrder } from './bench-order.ts';
import { jarCostOf } from './bench-order.ts';
import type { BenchRefusal } from './bench-refusal.ts';
import type { Flow } from './flow.ts';
import { staffOf, stampOf } from './flow.ts';
import { labelOf } from './jar-label.ts';
import { usedLots } from './used-lots.ts';

/** `jarCode`: as read from the jar itself, so that the decision is about the jar in the hand. */
export const releaseJar = (flow: Flow, asked: BenchAsked & { readonly jarCode: string }): Result<null, BenchRefusal> =>
  actAtBench(flow, {
    ...asked,
    content: { release: asked.jarCode },
    decide: (tx, bench) => {
      if (!mayDecide(bench)) return refuse({ kind: 'not-this-step' });
      const stopped = stoppedBy(bench);
      if (stopped) return refuse(stopped);
      return isOfJar(bench, asked.jarCode) ? decided(tx, flow, bench) : refuse({ kind: 'other-jar' });
    },
  });

/** At the end of the card; or before it, when a measured pH is out and stays out: then the jar can only be held. */
export const mayDecide = ({ step, checks }: BenchOrder): boolean =>
  step.kind === 'release' || (step.kind === 'ph' && checks.some((check) => check.kind === 'ph'));

/** Spaces, hyphens and small letters are forgiven. */
export const isOfJar = ({ view }: Pick<BenchOrder, 'view'>, code: string): boolean =>
  parseBatchCode(code).ok && code.replace(/[\s-]/g, '').toUpperCase() === view.jar?.batchCode;

function decided(tx: Writing, flow: Flow, bench: BenchOrder): BenchDecision {
  const { view, edition, card } = bench;
  const label = labelOf(tx, bench);
  if (!label.ok) return label;
  const size = need(edition.book.labelSizes, need(edition.book.jarSizes, card.jarSizeId).labelSizeId);
  const weighed = weighedFindings(tx, bench);
  if (!weighed.ok || !view.jar) return refuse({ kind: 'not-this-step' });
  const findings = [...weighed.value, ...labelFit(label.value.content, size)];
  const outcome = findings.length === 0 ? 'released' : 'held';
  const row = {
    jarCode: view.jar.batchCode,
    outcome,
    findings,
    label: label.value.content,
    useByDay: label.value.useByDay,
    materialCostMinor: jarCostOf(bench),
    byAccountId: staffOf(flow).accountId,
  } as const;
  return accept({
    kind: `jar-${outcome}`,
    body: { jarCode: row.jarCode, findings: findings.map((found) => found.code), useByDay: row.useByDay },
    save: (writing) => {
      insertRelease(writing, { ...row, ...stampOf(writing, flow.now) });
      freeReservations(writing, { orderId: view.order.id, reason: 'used', atMs: flow.now });
    },
  });
}

/** Refused while a line is outside its band. Where no pH was read, each lot of cream that was measured as it came in is asked for itself. */
function weighedFindings(tx: Reading, bench: BenchOrder): Result<readonly Finding[], null> {
  const { edition, card, progress, checks, stand } = bench;
  const { book } = edition;
  const amounts = weighedAmounts(card, progress.state);
  if (!amounts.ok) return refuse(null);
  const measuredPhX100 = checks.findLast((check) => check.kind === 'ph')?.phX100 ?? null;
  const jar = compose(book, amounts.value);
  const shifts = measuredPhX100 === null ? creamShifts(book, usedLots(tx, bench)) : [0];
  const found = shifts.flatMap((shift) => judgeWeighed(book, { jar, measuredPhX100, baseShiftX100: shift }, { day: stand.day }));
  return accept([...new Map(found.map((one) => [canonicalJson(one), one])).values()]);
}

/** How far each measured lot of cream lies from the approved base; 0 where none was measured. */
function creamShifts(book: Book, lots: readonly LotState[]): readonly number[] {
  const measured = lots.flatMap(({ lot }) => (lot.kind === 'base-cream' && lot.measuredPhX100 !== null ? [lot.measuredPhX100] : []));
  const shifts = measured.flatMap((read) => baseShiftX100(book, read) ?? []);
  return shifts.length > 0 ? [...new Set(shifts)] : [0];
}
