// A typed number with up to two decimals as whole hundredths: "4.85" is 485. Null for anything else, the other decimal sign included.
export function hundredthsOf(text: string): number | null {
  const found = /^(\d{1,3})(?:\.(\d{1,2}))?$/.exec(text.trim());
  return found ? Number(found[1]) * 100 + Number((found[2] ?? '').padEnd(2, '0')) : null;
}

/** Whole degrees; null for anything else. */
export function wholeOf(text: string): number | null {
  return /^\d{1,3}$/.test(text.trim()) ? Number(text.trim()) : null;
}
