// Sales for a file: what could point at one person is masked before it leaves.
import { maskedRows } from '#lib/review/combinations.ts';
import type { Flow } from './flow.ts';
import { showSales } from './show-sales.ts';

export interface ExportedSales {
  readonly rows: readonly { readonly name: string; readonly jarsCount: number | null; readonly revenueMinor: number | null }[];
  readonly totalCount: number | null;
  readonly currency: string;
}

export function exportSales(flow: Flow): ExportedSales {
  const { combinations, currency, jarsCount } = showSales(flow);
  const masked = maskedRows(combinations.map((one) => one.jarsCount));
  const rows = combinations.map((one, index) =>
    masked.rows[index]
      ? { name: one.name, jarsCount: null, revenueMinor: null }
      : { name: one.name, jarsCount: one.jarsCount, revenueMinor: one.revenueMinor },
  );
  return { rows, totalCount: masked.isTotalMasked ? null : jarsCount, currency };
}
