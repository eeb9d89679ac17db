// Money as it is typed: "1.50" → 150 minor units of a currency with two decimals. Anything else is no amount.

/** Whole minor units, or null where the text is no amount. A point or a comma may part the decimals. */
export function minorFromText(text: string): number | null {
  const parts = /^(\d{1,7})(?:[.,](\d{1,2}))?$/.exec(text.trim());
  return parts ? Number(parts[1]) * 100 + Number((parts[2] ?? '').padEnd(2, '0')) : null;
}

export const textFromMinor = (minor: number): string => (minor / 100).toFixed(2);
