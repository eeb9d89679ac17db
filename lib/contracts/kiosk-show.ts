// What the kiosk's page is given once: words, questions and sizes of the edition in force. No recipe, no rule, no effect of an answer.
import { z } from 'zod';
import { OUTCOMES } from '../rulebook/questionnaire.ts';
import { countSchema, massUgSchema, moneyMinorSchema } from './quantities.ts';
import { langSchema } from './words.ts';

export const outcomeSchema = z.enum(OUTCOMES);

const optionSchema = z.strictObject({
  id: z.string(),
  text: z.string(),
  hint: z.string().nullable(),
  exclusive: z.boolean(),
  isSkip: z.boolean(),
  ends: outcomeSchema.nullable(),
  skips: z.array(z.string()).readonly(),
});

const questionSchema = z.strictObject({
  id: z.string(),
  part: z.string(),
  text: z.string(),
  why: z.string().nullable(),
  choose: z.enum(['one', 'many']),
  mostCount: countSchema('answers'),
  options: z.array(optionSchema).readonly(),
});

export const kioskShowSchema = z.strictObject({
  shopName: z.string(),
  notice: z.string(),
  lang: langSchema,
  /** The questionnaire in every language on sale, so that a visit can change its language with its answers in hand. */
  wordings: z.array(z.strictObject({ lang: langSchema, questions: z.array(questionSchema).readonly() })).readonly(),
  currency: z.string(),
  editionHash: z.string(),
  editionNo: z.int().positive(),
  questions: z.array(questionSchema).readonly(),
  outcomesWorstFirst: z.array(outcomeSchema).readonly(),
  jarSizes: z.array(z.strictObject({ id: z.string(), netUg: massUgSchema, priceMinor: moneyMinorSchema })).readonly(),
});

export type KioskShow = z.output<typeof kioskShowSchema>;
