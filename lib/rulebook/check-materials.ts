// What a check will ask of a material must stand there: a powder's oil absorption, a pigment's number, the tag by which an acid is avoided.
import type { DocumentPath } from '../base/document-fault.ts';
import type { Book } from './book.ts';
import { isPowder } from './held-shares.ts';
import type { AvoidTag, Material, MaterialClass } from './material.ts';
import type { Faults } from './soundness-fault.ts';
import { fault } from './soundness-fault.ts';

/** Answers name the tag; a material of the class, or of the narrower tag, must therefore carry it. */
const IMPLIED: readonly { readonly by: AvoidTag | MaterialClass; readonly tag: AvoidTag }[] = [
  { by: 'aha', tag: 'acid' },
  { by: 'acid', tag: 'acid' },
  { by: 'retinoid', tag: 'retinoid' },
  { by: 'enzyme', tag: 'enzyme' },
];

export function* checkMaterials(book: Book): Faults {
  const { materials, substances, actives } = book.rulebook;
  for (const [index, material] of materials.entries()) {
    if (isPowder(material) && material.oilAbsorptionMgPer100g === undefined) {
      yield fault(['materials', index, 'oilAbsorptionMgPer100g'], 'oil-absorption-missing', {});
    }
    if (material.kind === 'pigment' && !hasColourIndex(book, material))
      yield fault(['materials', index, 'substances'], 'colour-index-missing', {});
  }
  for (const { materialId } of actives.filter((active) => active.role === 'active')) {
    const index = materials.findIndex((one) => one.id === materialId);
    const material = materials[index];
    if (material) yield* missingTags(['materials', index, 'tags'], material);
  }
  for (const [index, substance] of substances.entries()) {
    if (substance.exposureDemanded && !substance.exposure) yield fault(['substances', index, 'exposure'], 'exposure-missing', {});
  }
  const counted = substances.some((substance) => substance.solubility !== undefined);
  if (counted && !substances.some((substance) => substance.isWater)) yield fault(['substances'], 'no-water-substance', {});
}

const hasColourIndex = (book: Book, material: Material): boolean =>
  material.substances.some(({ substanceId }) => book.substances.get(substanceId)?.colourIndex !== undefined);

function* missingTags(path: DocumentPath, material: Material): Faults {
  const owed = IMPLIED.filter(({ by }) => material.tags.some((tag) => tag === by) || material.classes.some((one) => one === by));
  for (const { by, tag } of owed) {
    if (!material.tags.includes(tag)) yield fault(path, 'tag-missing', { tag, because: by });
  }
}
