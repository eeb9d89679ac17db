// Dates of the demonstration are offsets from the day of its first start, so that it never dies of age.
import type { LocalDay } from '#lib/units/time.ts';
import { addDays } from '#lib/units/time.ts';

export interface Dates {
  readonly testedOn: LocalDay;
  readonly judgedOn: LocalDay;
}

export const demoDates = (startDay: LocalDay): Dates => ({ testedOn: addDays(startDay, -210), judgedOn: addDays(startDay, -190) });
