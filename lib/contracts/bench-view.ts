// One order on the bench's screen: its steps by name, and the one thing to do now. The server parses its own reply, so nothing else can leave.
import { z } from 'zod';
import { benchRefusalSchema, daySchema, findingCodeSchema } from './bench-refusal.ts';
import { massUgSchema, moneyMinorSchema, phX100Schema, sharePpmSchema } from './quantities.ts';

const list = <T extends z.ZodType>(item: T) => z.array(item).readonly();
const scale = { stepUg: massUgSchema, capacityUg: massUgSchema };
const scaleSchema = z.object(scale);
const hexSchema = z.string().regex(/^#[0-9A-Fa-f]{6}$/);
const orderIdSchema = z.uuid();

export const stageSchema = z.enum([
  'placed',
  'held',
  'claimed',
  'mixing',
  'jar-held',
  'ready',
  'jar-discarded',
  'cancelled',
  'lapsed',
  'collected',
  'discarded',
]);
export const lookSchema = z.enum(['cream', 'oil', 'base-clay', 'tint-clay', 'mineral-colour', 'acid', 'botanical', 'humectant']);
export const layerSchema = z.strictObject({ name: z.string(), look: lookSchema, sharePpm: sharePpmSchema, fillHex: hexSchema.nullable() });

const lineNameSchema = z.union([
  z.strictObject({ kind: z.literal('stock'), name: z.string(), lookAlikeName: z.string().nullable() }),
  z.strictObject({ kind: z.enum(['cream', 'wetting-oil']), baseCode: z.string() }),
]);

const discardSchema = z.strictObject({ massUg: massUgSchema, stepUg: massUgSchema, wasteMinor: moneyMinorSchema });
const growSchema = z.strictObject({
  fromUg: massUgSchema,
  toUg: massUgSchema,
  needsSecondPaste: z.boolean(),
  wasteMinor: moneyMinorSchema,
  topUps: list(z.strictObject({ line: lineNameSchema, nowUg: massUgSchema, totalUg: massUgSchema, addUg: massUgSchema })),
});

export const doingSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('claim') }),
  z.strictObject({ kind: z.literal('held'), reason: z.string(), findings: list(findingCodeSchema) }),
  z.strictObject({ kind: z.literal('ended') }),
  z.strictObject({
    kind: z.literal('fitness'),
    scales: list(z.strictObject({ ...scale, id: z.uuid(), code: z.string(), weightsUg: list(massUgSchema), isFit: z.boolean() })),
    meter: z.strictObject({ buffersPhX100: list(phX100Schema), isFit: z.boolean() }).nullable(),
  }),
  z.strictObject({ kind: z.literal('clearance'), items: list(z.string()) }),
  z.strictObject({ kind: z.literal('protection'), items: list(z.string()), cautions: list(z.string()) }),
  z.strictObject({ kind: z.literal('bind-jar'), vesselCode: z.string(), scale: scaleSchema }),
  z.strictObject({
    kind: z.literal('weigh'),
    lineNo: z.int(),
    line: lineNameSchema,
    container: z.enum(['boat', 'vessel']),
    lotCode: z.string().nullable(),
    wantedUg: massUgSchema,
    loUg: massUgSchema,
    hiUg: massUgSchema,
    scale: scaleSchema,
    needsSecondPerson: z.boolean(),
    isTopUp: z.boolean(),
    isSecondPaste: z.boolean(),
    isLeftOver: z.boolean(),
    weighingNo: z.int(),
    weighingsCount: z.int(),
    portionsUg: list(massUgSchema),
    cautions: list(z.string()),
  }),
  z.strictObject({
    kind: z.literal('mend'),
    line: lineNameSchema,
    container: z.enum(['boat', 'vessel']),
    scale: scaleSchema,
    weighedUg: massUgSchema,
    hiUg: massUgSchema,
    outUg: massUgSchema.nullable(),
    grow: growSchema.nullable(),
    growRefusals: list(z.enum(['not-permitted', 'bench', 'scale-full', 'limit', 'line-outside-band', 'top-up-too-small', 'oil-short'])),
  }),
  z.strictObject({ kind: z.literal('paste'), isSecond: z.boolean() }),
  z.strictObject({ kind: z.literal('temperature'), atMostC: z.int() }),
  z.strictObject({ kind: z.literal('dissolve'), lines: list(lineNameSchema) }),
  z.strictObject({ kind: z.literal('draw-down'), hasFailed: z.boolean() }),
  z.strictObject({
    kind: z.literal('ph'),
    minPhX100: phX100Schema,
    maxPhX100: phX100Schema,
    method: z.string(),
    lastPhX100: phX100Schema.nullable(),
    correction: z.strictObject({ line: lineNameSchema, leastUg: massUgSchema, mostUg: massUgSchema, scale: scaleSchema }).nullable(),
  }),
  z.strictObject({ kind: z.literal('inspect'), wetHex: hexSchema, dryHex: hexSchema, colour: z.string(), hasFailed: z.boolean() }),
  z.strictObject({
    kind: z.literal('fill'),
    netUg: massUgSchema,
    tareUg: massUgSchema,
    scale: scaleSchema,
    lastNetUg: massUgSchema.nullable(),
  }),
  z.strictObject({ kind: z.literal('release'), netUg: massUgSchema, phX100: phX100Schema.nullable() }),
  z.strictObject({ kind: z.literal('ready'), useByDay: daySchema, labelPrintsCount: z.int() }),
  z.strictObject({ kind: z.literal('jar-held'), findings: list(findingCodeSchema) }),
]);

const stepSchema = z.strictObject({
  kind: z.enum([
    'fitness',
    'clearance',
    'protection',
    'bind-jar',
    'weigh',
    'paste',
    'cream',
    'temperature',
    'dissolve',
    'draw-down',
    'ph',
    'inspect',
    'fill',
    'release',
  ]),
  line: lineNameSchema.nullable(),
  layer: z.strictObject({ look: lookSchema, fillHex: hexSchema.nullable() }).nullable(),
  state: z.enum(['done', 'current', 'to-come']),
});

export const benchViewSchema = z.strictObject({
  orderId: orderIdSchema,
  shortCode: z.string(),
  name: z.string(),
  shopName: z.string(),
  benchName: z.string().nullable(),
  editionNo: z.int(),
  netUg: massUgSchema,
  batchUg: massUgSchema,
  stage: stageSchema,
  by: z.string().nullable(),
  isMine: z.boolean(),
  jarCode: z.string().nullable(),
  steps: list(stepSchema),
  stops: list(z.string()),
  currency: z.string(),
  discard: discardSchema,
  doing: doingSchema,
  lastReading: z.strictObject({ line: lineNameSchema, massUg: massUgSchema, stepUg: massUgSchema }).nullable(),
  remadeAsOrderId: orderIdSchema.nullable(),
});

export const orderInputSchema = z.strictObject({ orderId: orderIdSchema });

/** The reply to every act and to every look: where the order stands now, or why the act was refused. */
export const benchOutputSchema = z.union([
  z.strictObject({ ok: z.literal(true), view: benchViewSchema }),
  z.strictObject({ ok: z.literal(false), refusal: benchRefusalSchema }),
]);

export const fitnessOutputSchema = z.union([
  z.strictObject({ ok: z.literal(true), hasPassed: z.boolean() }),
  z.strictObject({ ok: z.literal(false), refusal: benchRefusalSchema }),
]);

export const lotOutputSchema = z.union([
  z.strictObject({ ok: z.literal(true) }),
  z.strictObject({ ok: z.literal(false), refusal: benchRefusalSchema }),
]);

export type BenchView = z.infer<typeof benchViewSchema>;
export type BenchDoing = BenchView['doing'];
export type BenchLineName = z.infer<typeof lineNameSchema>;
export type BenchOutput = z.infer<typeof benchOutputSchema>;
export type LotOutput = z.infer<typeof lotOutputSchema>;
export type FitnessOutput = z.infer<typeof fitnessOutputSchema>;
