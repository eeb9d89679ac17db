// From what clocks show to the instant. Summer time in the EU and the UK: Directive 2000/84/EC, Articles 2 and 3, last Sundays of March and
// October at 01:00 UTC; the other zones' offsets from the IANA time zone database, from memory.
import { describe, expect, test } from 'vitest';
import { instantIn, localDayIn } from '#lib/units/time.ts';

const utc = (text: string): number => Date.parse(text);

describe('the instant at which clocks show a time', () => {
  test.each([
    ['Europe/London', '2026-11-25T08:00', '2026-11-25T08:00:00Z'],
    ['Europe/London', '2026-07-01T08:00', '2026-07-01T07:00:00Z'],
    ['Europe/Paris', '2026-07-01T00:30', '2026-06-30T22:30:00Z'],
    ['America/New_York', '2026-12-31T23:59', '2027-01-01T04:59:00Z'],
    ['Asia/Kathmandu', '2026-01-01T00:00', '2025-12-31T18:15:00Z'],
    ['Pacific/Kiritimati', '2026-01-01T00:00', '2025-12-31T10:00:00Z'],
    ['Pacific/Pago_Pago', '2026-01-01T00:00', '2026-01-01T11:00:00Z'],
    ['UTC', '2026-02-28T12:34', '2026-02-28T12:34:00Z'],
  ])('%s at %s', (zone, shown, instant) => expect(instantIn(zone, shown)).toBe(utc(instant)));

  test('clocks put forward pass an hour over, and put back show one twice: the first is meant', () => {
    expect(instantIn('Europe/London', '2026-03-29T00:59')).toBe(utc('2026-03-29T00:59:00Z'));
    expect(instantIn('Europe/London', '2026-03-29T01:30')).toBeNull();
    expect(instantIn('Europe/London', '2026-03-29T02:00')).toBe(utc('2026-03-29T01:00:00Z'));
    expect(instantIn('Europe/London', '2026-10-25T01:30')).toBe(utc('2026-10-25T00:30:00Z'));
  });

  test.each(['', '2026-02-30T08:00', '2026-11-25', '2026-11-25T24:01', '2026-11-25T08:00:00', 'soon'])('"%s" is no time', (text) =>
    expect(instantIn('Europe/London', text)).toBeNull(),
  );

  test('lies on the day that it names', () => {
    for (const zone of ['Europe/London', 'America/New_York', 'Asia/Tokyo', 'Pacific/Auckland'])
      for (const day of ['2026-03-29', '2026-06-30', '2026-12-31']) {
        const at = instantIn(zone, `${day}T03:15`);
        expect(at === null ? null : localDayIn(zone, at)).toBe(day);
      }
  });
});
