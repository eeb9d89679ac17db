// The domain values that stand in one column as JSON. Strict: a member nobody expects is damage, not decoration.
import { z } from 'zod';
import type { Json } from '#lib/base/canonical-json.ts';
import type { Finding, FindingCode } from '#lib/base/finding.ts';
import { FINDING_CODES } from '#lib/base/finding.ts';
import type { LabelContent } from '#lib/label/label-content.ts';
import { LANGS, MARKET_IDS } from '#lib/rulebook/language.ts';
import type { Plan } from '#lib/rulebook/variant.ts';
import { massUg } from '#lib/units/mass.ts';
import { sharePpm } from '#lib/units/share.ts';
import { isLocalDay, localDay } from '#lib/units/time.ts';
import type { RegrownLine } from '#lib/weighing/readings.ts';

const ppm = z.int().min(0).max(1_000_000).transform(sharePpm);
const mass = z.int().min(0).transform(massUg);
const chosen = z.strictObject({ activeId: z.string(), levelPpm: ppm });

export const planShape: z.ZodType<Plan> = z.strictObject({
  variant: z.strictObject({ shadeId: z.string(), actives: z.array(chosen) }),
  adjuster: chosen.nullable(),
  lines: z.array(
    z.strictObject({
      stockId: z.string(),
      sharePpm: ppm,
      purpose: z.enum(['shade', 'active', 'adjuster']),
      materialId: z.string().nullable(),
    }),
  ),
});

const isFindingCode = (code: string): code is FindingCode => Object.hasOwn(FINDING_CODES, code);

/** The facts of a finding were typed when it was made; here only their form is checked. */
const findingShape = z
  .strictObject({
    code: z.string().refine(isFindingCode),
    ruleId: z.string(),
    facts: z.record(z.string(), z.union([z.string(), z.number(), z.null()])),
  })
  .transform((found) => found as unknown as Finding);

export const findingsShape: z.ZodType<readonly Finding[]> = z.array(findingShape);

export const textsShape: z.ZodType<readonly string[]> = z.array(z.string());

export const regrownLinesShape: z.ZodType<readonly RegrownLine[]> = z.array(
  z.strictObject({
    lineNo: z.int().min(1),
    exactUgText: z.string(),
    targetUg: mass,
    loUg: mass,
    hiUg: mass,
    topUpUg: mass,
    plannedWeighingsCount: z.int().min(1),
    into: z.enum(['paste', 'second-paste', 'vessel']).nullable(),
  }),
);

/** A document that another part of the house made and will read: kept as it is. */
export const jsonShape: z.ZodType<Json> = z.json() as z.ZodType<Json>;

/** One look at a scale or meter against its standard: what it should show, what it showed, in the unit of its kind. */
export const fitnessShape = z.array(
  z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('weight'), nominalUg: mass, shownUg: mass }),
    z.strictObject({ kind: z.literal('buffer'), nominalPhX100: z.int().min(0).max(1400), shownPhX100: z.int().min(0).max(1400) }),
    z.strictObject({ kind: z.literal('slope'), slopePpm: z.int().min(0) }),
  ]),
);
export type FitnessReading = z.output<typeof fitnessShape>[number];

const text = z.string();

/** A label as it was made for its jar: read back whole, or not at all. */
export const labelContentShape: z.ZodType<LabelContent> = z.strictObject({
  marketId: z.enum(MARKET_IDS),
  lang: z.enum(LANGS),
  productName: text,
  variantNames: z.array(text),
  netContent: z.strictObject({ gramsText: text, ouncesText: text.nullable() }),
  ingredientsText: text,
  cautions: z.array(z.strictObject({ cautionId: text, text })),
  batchCode: text.nullable(),
  durability: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('date'), day: text.refine(isLocalDay).transform(localDay), monthText: text }),
    z.strictObject({ kind: z.literal('opening-period'), openedMonths: z.int().min(0) }),
  ]),
  responsiblePerson: z.strictObject({ name: text, address: text, contact: text }),
  shop: z.strictObject({ name: text, address: text.nullable() }),
  directions: text,
  code: z.strictObject({ bracketed: text, raw: text }).nullable(),
});
