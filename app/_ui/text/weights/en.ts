// What a field for grams says; the source for the other languages.

export const en = {
  empty: 'Type the weight that the scale shows.',
  'not-a-number': 'Type digits only, such as {example}.',
  negative: 'A weight cannot be under 0. Tare the scale and weigh again.',
  'other-sign': 'You typed {typed}. Use a point, not a comma: {meant}.',
  'too-fine':
    '{decimals, plural, =0 {This scale shows no decimals. Type whole grams.} one {This scale shows 1 decimal. Type only what it shows.} other {This scale shows # decimals. Type only what it shows.}}',
  'between-steps': 'This scale moves in steps of {step}. Read it again.',
  'over-capacity': 'This scale weighs up to {capacity}. Read it again.',
} as const;

export type WeightsKey = keyof typeof en;
