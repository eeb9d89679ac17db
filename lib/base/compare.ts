// One order for everything that is printed, hashed or compared: UTF-16 code units, as RFC 8785 sorts keys. No locale may change a result.

/** -1, 0 or 1 by UTF-16 code units. */
export function compareText(a: string, b: string): -1 | 0 | 1 {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}

/** Compares by the first key that differs; each key function gives a text or a whole number. */
export function compareBy<T>(...keys: ((item: T) => string | number)[]): (a: T, b: T) => number {
  return (a, b) => {
    for (const key of keys) {
      const x = key(a);
      const y = key(b);
      if (x !== y) return x < y ? -1 : 1;
    }
    return 0;
  };
}
