// The label of a released jar as it was made at its release, with the number of the print it belongs to. Nothing is made anew here.
import { countLabelPrints, findRelease } from '#db/releases.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import type { LabelContent } from '#lib/label/label-content.ts';
import { need } from '#lib/rulebook/book.ts';
import { readBenchOrder } from './bench-order.ts';
import type { Flow } from './flow.ts';
import type { PictureLayer } from './jar-picture.ts';
import { jarPicture } from './jar-picture.ts';

export interface LabelView {
  readonly content: LabelContent;
  /** From 2 on the label says that it is a copy. */
  readonly copyNo: number;
  readonly widthUm: number;
  readonly heightUm: number;
  readonly layers: readonly PictureLayer[];
}

export type LabelRefusal = { readonly kind: 'no-such-order' | 'not-released' | 'not-asked-for' };

export const showLabel = (flow: Flow, orderId: string): Result<LabelView, LabelRefusal> =>
  flow.db.read((tx): Result<LabelView, LabelRefusal> => {
    const bench = readBenchOrder(tx, flow, orderId);
    if (!bench) return refuse({ kind: 'no-such-order' });
    const jarCode = bench.view.jar?.batchCode;
    const release = jarCode === undefined ? undefined : findRelease(tx, jarCode);
    if (jarCode === undefined || !release || (bench.stage !== 'ready' && bench.stage !== 'collected'))
      return refuse({ kind: 'not-released' });
    const copyNo = countLabelPrints(tx, jarCode);
    if (copyNo === 0) return refuse({ kind: 'not-asked-for' });
    const { book } = bench.edition;
    const size = need(book.labelSizes, need(book.jarSizes, bench.card.jarSizeId).labelSizeId);
    const layers = jarPicture(book, bench.card.plan, 'en').filter((layer) => layer.look !== 'cream' && layer.look !== 'oil');
    return accept({ content: release.label, copyNo, widthUm: size.widthUm, heightUm: size.heightUm, layers });
  });
