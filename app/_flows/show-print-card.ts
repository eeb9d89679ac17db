// The card as it goes onto paper: the issued snapshot, named and dated. A card that no longer counts is not printed.
import type { Reading } from '#db/connection.ts';
import { findEditionInForce } from '#db/editions.ts';
import { readShop } from '#db/shop.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import { need } from '#lib/rulebook/book.ts';
import type { MassUg } from '#lib/units/mass.ts';
import { massUg } from '#lib/units/mass.ts';
import type { InstantMs } from '#lib/units/time.ts';
import type { Place } from '#lib/weighing/bench-line.ts';
import type { PhCheck } from '#lib/weighing/card.ts';
import type { BenchOrder } from './bench-order.ts';
import { readBenchOrder } from './bench-order.ts';
import type { LineName } from './card-names.ts';
import { lineName } from './card-names.ts';
import type { Flow } from './flow.ts';
import { jarName } from './jar-picture.ts';

export interface PrintLine {
  readonly lineNo: number;
  readonly name: LineName;
  readonly place: Place;
  readonly targetUg: MassUg;
  readonly loUg: MassUg;
  readonly hiUg: MassUg;
  readonly stepUg: MassUg;
  readonly lotCodes: readonly string[];
  readonly needsSecondPerson: boolean;
  readonly portionsUg: readonly MassUg[];
}

export interface PrintCard {
  readonly orderId: string;
  readonly shortCode: string;
  readonly jarCode: string | null;
  readonly name: string;
  readonly baseCode: string;
  readonly editionNo: number;
  readonly issueNo: number;
  readonly printedAtMs: InstantMs;
  readonly zone: string;
  readonly netUg: MassUg;
  readonly batchUg: MassUg;
  readonly totalUg: MassUg;
  readonly leftUg: MassUg;
  readonly lines: readonly PrintLine[];
  readonly atMostC: number | null;
  readonly ph: PhCheck | null;
  readonly cautions: readonly string[];
  readonly notice: string;
}

export type PrintCardRefusal = { readonly kind: 'no-such-order' | 'order-ended' | 'older-edition' };

export const showPrintCard = (flow: Flow, orderId: string): Result<PrintCard, PrintCardRefusal> =>
  flow.db.read((tx): Result<PrintCard, PrintCardRefusal> => {
    const bench = readBenchOrder(tx, flow, orderId);
    if (!bench) return refuse({ kind: 'no-such-order' });
    if (bench.stage !== 'placed' && bench.stage !== 'claimed' && bench.stage !== 'mixing') return refuse({ kind: 'order-ended' });
    const isCurrent = findEditionInForce(tx, flow.now)?.hash === bench.edition.head.hash;
    return isCurrent || bench.stage === 'mixing' ? accept(printCard(tx, flow, bench)) : refuse({ kind: 'older-edition' });
  });

function printCard(tx: Reading, flow: Flow, { view, card, edition, issueNo }: BenchOrder): PrintCard {
  const { book, head } = edition;
  const { zone, notice } = readShop(tx);
  const cream = card.steps.find((step) => step.kind === 'cream');
  const temperature = card.steps.find((step) => step.kind === 'temperature');
  const ph = card.steps.find((step) => step.kind === 'ph');
  const cautionIds = card.steps.flatMap((step) => (step.kind === 'protection' ? step.cautionIds : []));
  return {
    orderId: view.order.id,
    shortCode: view.order.shortCode,
    jarCode: view.jar?.batchCode ?? null,
    name: jarName(book, card.plan.variant, 'en'),
    baseCode: book.rulebook.base.code,
    editionNo: head.editionNo,
    issueNo,
    printedAtMs: flow.now,
    zone,
    netUg: card.netUg,
    batchUg: card.batchUg,
    totalUg: card.totalUg,
    leftUg: massUg(card.batchUg - card.netUg),
    lines: card.lines.map((line) => ({
      lineNo: line.lineNo,
      name: lineName(line),
      place: line.place,
      targetUg: line.targetUg,
      loUg: line.loUg,
      hiUg: line.hiUg,
      stepUg: line.scale.stepUg,
      lotCodes: line.lots.map((lot) => lot.lotCode),
      needsSecondPerson: line.needsSecondPerson,
      portionsUg: cream?.lineNo === line.lineNo ? cream.portionsUg : [],
    })),
    atMostC: temperature?.atMostC ?? null,
    ph: ph ? { minPhX100: ph.minPhX100, maxPhX100: ph.maxPhX100, method: ph.method } : null,
    cautions: cautionIds.flatMap((id) => book.rulebook.texts.en?.[need(book.cautions, id).textId] ?? []),
    notice,
  };
}
