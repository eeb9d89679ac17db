// What no mask for this person in this shop can hold, found before any mask is judged: whatever is wanted by name is in the jar however it
// is weighed. It only ever leaves out what the verdict would refuse; carriers and the base are the verdict's to judge.
import type { Person } from '../answers/person.ts';
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import type { Material } from '../rulebook/material.ts';
import type { ChosenActive, Variant } from '../rulebook/variant.ts';
import { WHOLE_PPM } from '../units/share.ts';

/** One of the person's bounds on the whole jar, as units per ppm of a material. */
interface Bound {
  readonly unitsOf: (material: Material) => number;
  readonly mostUnits: number;
}

/** What a shade or a level brings towards each bound at the least; null: it cannot be in any mask. */
type Brings = readonly number[] | null;

/** @param absentStockIds stocks of which the shop has nothing that it may use */
export function mayBeOffered(book: Book, person: Person, absentStockIds: ReadonlySet<string>): (variant: Variant) => boolean {
  const { shades, actives } = book.rulebook;
  const bounds = boundsOf(book, person);
  const barred = barredMaterials(book, person, absentStockIds);
  const brings = (wanted: readonly { readonly materialId: string; readonly leastPpm: number }[]): Brings =>
    wanted.some(({ materialId }) => barred.has(materialId))
      ? null
      : bounds.map(({ unitsOf }) => wanted.reduce((sum, one) => sum + one.leastPpm * unitsOf(need(book.materials, one.materialId)), 0));
  const ofShade = new Map(
    shades.map(({ id, parts }) => [id, brings(parts.map(({ materialId, sharePpm }) => ({ materialId, leastPpm: sharePpm })))]),
  );
  const ofLevel = new Map(
    actives.flatMap(({ id, materialId, strengthPpm, levels }) =>
      levels.map(({ levelPpm }) => [
        levelKey({ activeId: id, levelPpm }),
        brings([{ materialId, leastPpm: (levelPpm * WHOLE_PPM) / strengthPpm }]),
      ]),
    ),
  );
  return (variant) => {
    const all = [ofShade.get(variant.shadeId), ...variant.actives.map((chosen) => ofLevel.get(levelKey(chosen)))];
    return (
      all.every((one) => one !== null) &&
      bounds.every(({ mostUnits }, bound) => all.reduce((sum, one) => sum + (one?.[bound] ?? 0), 0) <= mostUnits)
    );
  };
}

const levelKey = ({ activeId, levelPpm }: ChosenActive): string => `${activeId}@${levelPpm}`;

const boundsOf = (book: Book, person: Person): readonly Bound[] => [
  ...[...person.capIds.keys()].map((id): Bound => {
    const { materialClass, maxPpm } = need(book.personCaps, id);
    return { unitsOf: (material) => (material.classes.includes(materialClass) ? 1 : 0), mostUnits: maxPpm };
  }),
  ...(person.mildest.length === 0
    ? []
    : [{ unitsOf: (material: Material) => material.irritancyUnitsPerPpm, mostUnits: book.rulebook.house.gentleIrritancyUnits }]),
];

function barredMaterials(book: Book, person: Person, absentStockIds: ReadonlySet<string>): ReadonlySet<string> {
  const present = new Set(
    book.rulebook.stocks.filter((stock) => !absentStockIds.has(stock.id)).flatMap((stock) => stock.parts.map((one) => one.materialId)),
  );
  return new Set(
    book.rulebook.materials
      .filter((material) => !present.has(material.id) || material.tags.some((tag) => person.excluded.has(tag)))
      .map((material) => material.id),
  );
}
