// Colours of the token sheet against the contrast that the look promises.
// Source: WCAG 2.2, relative luminance and contrast ratio; 1.4.6 (7:1 for text) and 1.4.11 (3:1 for parts of controls).
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { chartColours, earth } from '#app/_ui/drawing/earth.data.ts';
import { lightness, markOn } from '#app/_ui/drawing/lightness.ts';

const sheet = readFileSync(new URL('../../app/_ui/style/tokens.css', import.meta.url), 'utf8');

function token(name: string): string {
  const hex = new RegExp(`^\\s*--${name}: (#[0-9a-f]{6});`, 'm').exec(sheet)?.[1];
  if (hex === undefined) throw new Error(`no colour ${name}`);
  return hex;
}

// WCAG writes 0.03928 where IEC 61966-2-1 has 0.04045; no 8-bit colour falls between.
function luminance(hex: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) => {
    const channel = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return channel <= 0.03928 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(one: string, other: string): number {
  const [light, dark] = [luminance(one), luminance(other)].sort((a, b) => b - a) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

describe('text', () => {
  test.each([
    ['ink', 'paper'],
    ['ink', 'surface'],
    ['ink', 'wash'],
    ['ink', 'ok-bg'],
    ['ink', 'care-bg'],
    ['ink', 'stop-bg'],
    ['ink-2', 'paper'],
    ['ink-2', 'surface'],
    ['survey', 'paper'],
    ['survey', 'surface'],
    ['stop', 'paper'],
    ['stop', 'surface'],
    ['care', 'paper'],
    ['care', 'care-bg'],
    ['ok', 'surface'],
    ['surface', 'ink'],
    ['surface', 'survey'],
    ['surface', 'survey-deep'],
    ['surface', 'stop'],
  ])('%s on %s has 7:1', (text, ground) => {
    expect(contrast(token(text), token(ground))).toBeGreaterThanOrEqual(7);
  });

  // Marks with a word in ink beside them, or words of 600 and more: never under the 4.5:1 of WCAG 1.4.3.
  test.each([
    ['ok', 'paper'],
    ['ok', 'ok-bg'],
    ['stop', 'stop-bg'],
    ['ink-2', 'wash'],
    ['ink-2', 'care-bg'],
  ])('%s on %s has 6:1', (text, ground) => {
    expect(contrast(token(text), token(ground))).toBeGreaterThanOrEqual(6);
  });
});

test.each(['paper', 'surface'])('the border of a control has 3:1 on %s', (ground) => {
  expect(contrast(token('line'), token(ground))).toBeGreaterThanOrEqual(3);
});

test('the inner focus ring has 3:1 against the outer one and against the blue it surrounds', () => {
  expect(contrast(token('focus'), token('ink'))).toBeGreaterThanOrEqual(3);
  expect(contrast(token('focus'), token('survey'))).toBeGreaterThanOrEqual(3);
});

test.each(chartColours)('chart colour %s has 3:1 on paper', (colour) => {
  expect(contrast(colour, token('paper'))).toBeGreaterThanOrEqual(3);
});

test.each(Object.entries(earth))('a hatch on %s can be seen: 3:1', (_, fill) => {
  expect(contrast(markOn(fill), fill)).toBeGreaterThanOrEqual(3);
});

// CIE 15: L* of white is 100, of black 0; the mid grey #777777 is L* 50.0 (linear 0.18447 by IEC 61966-2-1, 116 × 0.18447^(1/3) − 16).
test('lightness of known colours', () => {
  expect(lightness('#FFFFFF')).toBeCloseTo(100, 6);
  expect(lightness('#000000')).toBe(0);
  expect(lightness('#777777')).toBeCloseTo(50.03, 1);
  expect(() => lightness('#777')).toThrow('six-digit');
});
