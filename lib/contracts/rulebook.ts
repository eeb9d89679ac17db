// The whole rulebook on the wire. The contract says whether a document can be read as a rulebook; whether it makes sense is for
// lib/rulebook/check-rulebook, so that a draft with holes can still be saved and worked on.
import { z } from 'zod';
import type { DocumentPath } from '../base/document-fault.ts';
import type { Result } from '../base/result.ts';
import { accept, refuse } from '../base/result.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import type { ShapeFault } from './document-issues.ts';
import { documentFaults } from './document-issues.ts';
import { baseSchema, houseRulesSchema } from './rulebook-base.ts';
import { classJudgementSchema, classRuleSchema, evidenceSchema, pairJudgementSchema, scopeSchema } from './rulebook-judgements.ts';
import { limitRowSchema, marketSchema } from './rulebook-limits.ts';
import { materialSchema, stockSchema, substanceSchema } from './rulebook-materials.ts';
import { activeSchema, jarSizeSchema, labelSizeSchema, scaleProfileSchema, shadeSchema, vesselSchema } from './rulebook-offer.ts';
import { cautionSchema, concernSchema, crossContactSchema, personCapSchema, questionSchema } from './rulebook-questionnaire.ts';
import { codeSchema, idSchema, langSchema, statementSchema, textSchema } from './words.ts';

/** Strict all the way down: an unknown key is a fault, never dropped. */
export const rulebookSchema = z.strictObject({
  schemaVersion: z.literal(1),
  code: codeSchema,
  title: statementSchema,
  notice: textSchema,
  currency: textSchema,
  languages: z.array(langSchema),
  base: baseSchema,
  house: houseRulesSchema,
  substances: z.array(substanceSchema),
  materials: z.array(materialSchema),
  stocks: z.array(stockSchema),
  shades: z.array(shadeSchema),
  actives: z.array(activeSchema),
  pairJudgements: z.array(pairJudgementSchema),
  classJudgements: z.array(classJudgementSchema),
  classRules: z.array(classRuleSchema),
  evidence: z.array(evidenceSchema),
  scopes: z.array(scopeSchema),
  limits: z.array(limitRowSchema),
  markets: z.array(marketSchema),
  concerns: z.array(concernSchema),
  questions: z.array(questionSchema),
  personCaps: z.array(personCapSchema),
  crossContacts: z.array(crossContactSchema),
  cautions: z.array(cautionSchema),
  jarSizes: z.array(jarSizeSchema),
  vessels: z.array(vesselSchema),
  labelSizes: z.array(labelSizeSchema),
  scaleProfiles: z.array(scaleProfileSchema),
  texts: z.partialRecord(langSchema, z.record(idSchema, textSchema)),
});

/** As it is written and exported: a published edition carries its number. A rulebook read from it has none. */
const documentSchema = rulebookSchema.extend({ editionNo: z.int().positive().optional() });

/** A parsed JSON document as a rulebook, or every place where it cannot be read as one. */
export function parseRulebook(json: unknown): Result<Rulebook, readonly ShapeFault[]> {
  const parsed = documentSchema.safeParse(json);
  if (!parsed.success) return refuse(documentFaults(json, parsed.error.issues));
  const reserved = reservedKeys(json, []);
  const { editionNo: _ofTheEdition, ...rulebook } = parsed.data;
  return reserved.length > 0 ? refuse(reserved) : accept(rulebook);
}

/** JSON Schema (draft 2020-12) of the document as it is written, for editors and importers. */
export function rulebookJsonSchema(): z.core.JSONSchema.BaseSchema {
  return z.toJSONSchema(documentSchema, { io: 'input' });
}

/** An open record passes over an own key `__proto__` in silence; here nothing is dropped in silence. */
function reservedKeys(value: unknown, path: DocumentPath): readonly ShapeFault[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, member]) =>
    key === '__proto__'
      ? [{ path: [...path, key], code: 'bad-text' as const, message: 'cannot be an id: give it another name' }]
      : reservedKeys(member, [...path, key]),
  );
}
