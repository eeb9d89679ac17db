// Money in minor units of the rulebook's one currency.
import type { Unit } from './unit.ts';
import { wholeUnit } from './unit.ts';

export type MoneyMinor = Unit<'MoneyMinor'>;

/** Whole minor units (pence, cents), 0 or more. Throws a Fault otherwise. */
export const moneyMinor: (value: number) => MoneyMinor = wholeUnit('MoneyMinor');

export const addMoney = (a: MoneyMinor, b: MoneyMinor): MoneyMinor => moneyMinor(a + b);
