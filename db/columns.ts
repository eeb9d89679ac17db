// Columns that keep their unit: what leaves a column has passed the unit's constructor, and so has what enters it.
// A share can then never be stored as a mass, nor a half be read back as a whole.

import type { SQL } from 'drizzle-orm';
import { sql } from 'drizzle-orm';
import type { AnySQLiteColumn } from 'drizzle-orm/sqlite-core';
import { customType } from 'drizzle-orm/sqlite-core';
import type { z } from 'zod';
import { canonicalJson } from '#lib/base/canonical-json.ts';
import { invariant } from '#lib/base/invariant.ts';
import { phX100 as makePhX100 } from '#lib/units/chemistry.ts';
import { massDifferenceUg as makeMassDifferenceUg, massUg as makeMassUg } from '#lib/units/mass.ts';
import { temperatureC as makeTemperatureC } from '#lib/units/material-property.ts';
import { moneyMinor as makeMoneyMinor } from '#lib/units/money.ts';
import { isoWeekOf, instantMs as makeInstantMs, localDay as makeLocalDay } from '#lib/units/time.ts';

type Kept<T, D> = { readonly sqlType: 'integer' | 'text'; readonly read: (stored: D) => T; readonly write: (value: T) => D };

/** A null passes untouched: whether a column may hold none is the column's own `notNull`. */
function kept<T, D>({ sqlType, read, write }: Kept<T, D>) {
  return customType<{ data: T; driverData: D }>({
    dataType: () => sqlType,
    fromDriver: read,
    toDriver: (value) => (value === null ? (null as D) : write(value)),
  });
}

const measured = <T extends number>(make: (value: number) => T) => kept<T, number>({ sqlType: 'integer', read: make, write: make });
const written = <T extends string>(make: (value: string) => T) => kept<T, string>({ sqlType: 'text', read: make, write: make });

export const massUg = measured(makeMassUg);
export const massDifferenceUg = measured(makeMassDifferenceUg);
export const moneyMinor = measured(makeMoneyMinor);
export const phX100 = measured(makePhX100);
export const temperatureC = measured(makeTemperatureC);
export const instantMs = measured(makeInstantMs);
export const localDay = written(makeLocalDay);
export const isoWeek = measured(isoWeekOf);

/** A count, or a number in a row of numbers. */
export const whole = measured((value) => {
  invariant(Number.isSafeInteger(value) && value >= 0, `must be a whole number from 0 up, not ${value}`);
  return value;
});
export const difference = measured((value) => {
  invariant(Number.isSafeInteger(value), `must be a whole number, not ${value}`);
  return value;
});

/** An exact count that may pass 2^53: decimal digits as text. */
export const bigCount = kept<bigint, string>({
  sqlType: 'text',
  read: (text) => BigInt(checked(text, /^(0|[1-9]\d*)$/, 'a count')),
  write: (count) => checked(String(count), /^(0|[1-9]\d*)$/, 'a count'),
});

/** Yes or no, stored as 1 or 0; anything else is damage. */
export const flag = kept<boolean, number>({
  sqlType: 'integer',
  read: (stored) => {
    invariant(stored === 0 || stored === 1, `a flag is 0 or 1, not ${stored}`);
    return stored === 1;
  },
  write: Number,
});

export const plainText = written((text) => text);

const UUID_V7 = /^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;
/** RFC 9562 version 7, lower case: sorts by the time it was made. */
export const uuid = written((text) => checked(text, UUID_V7, 'a UUIDv7'));

export const sha256Hex = written((text) => checked(text, /^[0-9a-f]{64}$/, 'a SHA-256'));

/** One of a closed list; `isOneOf` gives the matching CHECK of the table. */
export const oneOf = <const V extends readonly string[]>(values: V) =>
  written((text): V[number] => {
    invariant(values.includes(text), `"${text}" is none of ${values.join(', ')}`);
    return text;
  });

export const isOneOf = (column: AnySQLiteColumn, values: readonly string[]): SQL =>
  sql`${column} in (${sql.raw(values.map((value) => `'${value}'`).join(', '))})`;

/** Domain values as canonical JSON text, parsed by their schema both ways. */
export const jsonOf = <T>(schema: z.ZodType<T>) =>
  kept<T, string>({
    sqlType: 'text',
    read: (text) => schema.parse(JSON.parse(text)),
    write: (value) => canonicalJson(schema.parse(value)),
  });

function checked(text: string, pattern: RegExp, what: string): string {
  invariant(pattern.test(text), `not ${what}: "${text}"`);
  return text;
}
