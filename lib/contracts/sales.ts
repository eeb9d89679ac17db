// Combinations sold, as a file. Groups under five jars are masked, as null.
import { z } from 'zod';

export const salesOutputSchema = z.strictObject({
  rows: z.array(z.strictObject({ name: z.string(), jarsCount: z.int().nullable(), revenueMinor: z.int().nullable() })).readonly(),
  totalCount: z.int().nullable(),
  currency: z.string(),
});

export type SalesOutput = z.infer<typeof salesOutputSchema>;

/** A cell of a CSV file: quoted, and what a spreadsheet could take for a formula led by an apostrophe. */
const cell = (value: string | number | null): string => {
  const text = value === null ? 'fewer than 5' : String(value);
  return `"${(/^[=+\-@\t\r]/.test(text) ? `'${text}` : text).replaceAll('"', '""')}"`;
};

/** RFC 4180 with a header row; money in minor units, named in the header. */
export const salesCsv = ({ rows, totalCount, currency }: SalesOutput): string =>
  [
    ['combination', 'jars_count', `revenue_minor_${currency}`],
    ...rows.map((row) => [row.name, row.jarsCount, row.revenueMinor]),
    ['total', totalCount, ''],
  ]
    .map((row) => `${row.map(cell).join(',')}\r\n`)
    .join('');
