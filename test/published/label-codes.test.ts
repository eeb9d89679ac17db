// Codes and dates on the label against published check characters, check digits and calendar rules.
import { describe, expect, it } from 'vitest';
import { batchCode, checkCharacter, parseBatchCode } from '#lib/label/batch-code.ts';
import { dayOfGs1, elementString, gs1CheckDigit, gs1Date, SEPARATOR } from '#lib/label/gs1.ts';
import { netContentText } from '#lib/label/net-content.ts';
import { durabilityOf, lastDayOfUse, monthOver } from '#lib/label/use-by.ts';
import { gramsToUg } from '#lib/units/mass.ts';
import { localDay } from '#lib/units/time.ts';

describe('ISO/IEC 7064, MOD 37,36 (examples from memory)', () => {
  it.each([
    ['A12425GABC1234002', 'M'],
    ['0000000189470000', '8'],
  ])('%s is closed by %s', (body, check) => {
    expect(checkCharacter(body)).toBe(check);
  });
  it('jar 17 of shop ML on 25 November 2026, the 329th day (ISO 8601 ordinal date)', () => {
    const code = batchCode({ shop: 'ML', day: localDay('2026-11-25'), runningNo: 17 });
    expect(code.slice(0, 11)).toBe('ML263290017');
    expect(parseBatchCode(`${code.slice(0, 2)} ${code.slice(2, 7)}-${code.slice(7)}`.toLowerCase())).toEqual({
      ok: true,
      value: { shop: 'ML', day: '2026-11-25', runningNo: 17 },
    });
  });
});

describe('GS1 General Specifications', () => {
  it.each([
    ['730001100001', 7],
    ['629104150021', 3],
    ['400638133393', 1],
    ['03600029145', 2],
    ['950600013435', 2],
  ])('mod-10 check digit of %s is %d (the first published, the others from memory)', (digits, check) => {
    expect(gs1CheckDigit(digits)).toBe(check);
  });
  it('a sum that is a multiple of ten takes 0', () => {
    expect(gs1CheckDigit('0')).toBe(0);
  });
  it('puts predefined lengths first and separates a variable element from the next (from memory)', () => {
    const made = elementString([
      { code: '10', text: 'ABC123' },
      { code: '21', text: '7' },
      { code: '17', text: '270130' },
    ]);
    expect(made).toEqual({ ok: true, value: { bracketed: '(17)270130(10)ABC123(21)7', raw: `1727013010ABC123${SEPARATOR}217` } });
  });
  it('refuses a GTIN with a wrong check digit, a date of five digits and a batch of 21 characters', () => {
    expect(elementString([{ code: '01', text: '09506000134351' }])).toEqual({ ok: false, refusal: '01' });
    expect(elementString([{ code: '01', text: '09506000134352' }]).ok).toBe(true);
    expect(elementString([{ code: '17', text: '27013' }])).toEqual({ ok: false, refusal: '17' });
    expect(elementString([{ code: '10', text: 'A'.repeat(21) }])).toEqual({ ok: false, refusal: '10' });
  });
  it('dates are YYMMDD, 00 is the last day of the month, and the century is the near one (from memory)', () => {
    expect(gs1Date(localDay('2027-01-30'))).toBe('270130');
    expect(dayOfGs1('280200', 2026)).toBe('2028-02-29');
    expect(dayOfGs1('760101', 2026)).toBe('2076-01-01');
    expect(dayOfGs1('770101', 2026)).toBe('1977-01-01');
    expect(dayOfGs1('010101', 2099)).toBe('2101-01-01');
    expect(dayOfGs1('271301', 2026)).toBeNull();
    expect(dayOfGs1('270229', 2026)).toBeNull();
  });
});

describe('date of minimum durability: Regulation (EC) No 1223/2009, Article 19(1)(c)', () => {
  const jar = {
    mixedOn: localDay('2026-11-25'),
    jarLifeMonths: 6,
    lots: [
      { expiresOn: localDay('2027-06-30'), openedOn: localDay('2026-11-25'), inUseDays: null },
      { expiresOn: localDay('2027-12-31'), openedOn: localDay('2026-11-01'), inUseDays: 90 },
      { expiresOn: localDay('2027-03-14'), openedOn: localDay('2026-11-25'), inUseDays: null },
    ],
    packagingExpiresOn: null,
  };
  it('the earliest of jar life, expiries and days in use: 30 Jan 2027, month form 12/2026 (worked by hand)', () => {
    expect(lastDayOfUse(jar)).toBe('2027-01-30');
    expect(durabilityOf(jar, 6)).toEqual({ ok: true, value: { kind: 'date', day: '2027-01-30', monthText: '12/2026' } });
  });
  it('a month counts as over on its last day', () => {
    expect([monthOver(localDay('2027-01-31')), monthOver(localDay('2027-01-30')), monthOver(localDay('2027-01-01'))]).toEqual([
      '01/2027',
      '12/2026',
      '12/2026',
    ]);
  });
  it('exactly 30 months owe a date; a day more owes the time after opening', () => {
    const long = (expiry: string) => ({
      ...jar,
      jarLifeMonths: 48,
      lots: [{ expiresOn: localDay(expiry), openedOn: jar.mixedOn, inUseDays: null }],
    });
    expect(durabilityOf(long('2029-05-25'), 12)).toMatchObject({ ok: true, value: { kind: 'date', day: '2029-05-25' } });
    expect(durabilityOf(long('2029-05-26'), 12)).toEqual({ ok: true, value: { kind: 'opening-period', openedMonths: 12 } });
  });
  it('months are added within the calendar: 31 Aug 2026 + 6 months = 28 Feb 2027 (ISO 8601)', () => {
    expect(lastDayOfUse({ ...jar, mixedOn: localDay('2026-08-31'), lots: [] })).toBe('2027-02-28');
  });
  it('packaging may end first, and a jar that is over before it is mixed is refused', () => {
    expect(lastDayOfUse({ ...jar, packagingExpiresOn: localDay('2026-12-31') })).toBe('2026-12-31');
    expect(durabilityOf({ ...jar, packagingExpiresOn: localDay('2026-11-24') }, 6)).toEqual({ ok: false, refusal: 'already-over' });
  });
});

describe('net content: 1 avoirdupois ounce = 28.349523125 g; rounded down to three figures (21 CFR 701.13, from memory)', () => {
  it.each([
    [50, '1.76'],
    [30, '1.05'],
    [100, '3.52'],
    [15, '0.529'],
    [300, '10.5'],
    [3000, '105'],
  ])('%d g', (grams, ounces) => {
    expect(netContentText(gramsToUg(grams), 'US', 'en')).toEqual({ gramsText: String(grams), ouncesText: ounces });
  });
  it('the EU prints grams with the decimal sign of the language', () => {
    expect(netContentText(gramsToUg(7.5), 'EU', 'fr')).toEqual({ gramsText: '7,5', ouncesText: null });
    expect(netContentText(gramsToUg(50), 'EU', 'ar')).toEqual({ gramsText: '50', ouncesText: null });
  });
});
