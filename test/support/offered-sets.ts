// Whom every permitted mask of a book may be offered to, counted exactly. A person reads of a jar only what follows here, so masks that are
// alike in it are asked about once; where the first plan does not suit, the verdict is asked for another.

import type { Person } from '#lib/answers/person.ts';
import { irritancyLoad } from '#lib/chemistry/caps.ts';
import type { Composition } from '#lib/composition/compose.ts';
import { composePlan } from '#lib/composition/compose.ts';
import { checkExposure } from '#lib/law/exposure.ts';
import type { Book } from '#lib/rulebook/book.ts';
import type { Variant } from '#lib/rulebook/variant.ts';
import { variantKey } from '#lib/rulebook/variant.ts';
import { WHOLE_PPM } from '#lib/units/share.ts';
import type { LocalDay } from '#lib/units/time.ts';
import { mayBeOffered } from '#lib/variants/may-be-offered.ts';
import { permittedVariants } from '#lib/variants/permitted.ts';
import { classPart } from '#lib/verdict/check-classes.ts';
import { checkPerson, tagsIn } from '#lib/verdict/check-person.ts';
import { judgeVariant } from '#lib/verdict/judge.ts';

interface Alike {
  readonly jar: Composition;
  readonly variants: readonly Variant[];
}

export interface OfferedSets {
  readonly count: number;
  /** Every permitted variant that this person may have. */
  readonly to: (person: Person) => readonly Variant[];
  /** How many of these another person may have too. */
  readonly countAlso: (variants: readonly Variant[], person: Person) => number;
}

export function offeredSets(book: Book, day: LocalDay): OfferedSets {
  const permitted = permittedVariants(book, day);
  const groups = [
    ...Map.groupBy(
      permitted.map(({ variant, plan }) => ({ variant, jar: composePlan(book, plan) })),
      ({ jar }) => readOf(book, jar),
    ).values(),
  ];
  const alike = groups.map((members): Alike => ({ jar: jarOf(members), variants: members.map(({ variant }) => variant) }));
  const groupOf = new Map(alike.flatMap((group) => group.variants.map((variant) => [variantKey(variant), group] as const)));
  const suits = (jar: Composition, person: Person): boolean =>
    checkPerson(book, jar, person).length === 0 && checkExposure(book, jar, largerArea(person)).length === 0;
  const asked = (variant: Variant, person: Person): boolean => judgeVariant(book, variant, { day, person }).verdict.kind === 'permitted';
  const answering = (person: Person) => {
    const known = new Map<Alike, boolean>();
    const may = mayBeOffered(book, person, new Set());
    return (variant: Variant): boolean => {
      const group = groupOf.get(variantKey(variant));
      if (!group) return false;
      const suited = known.get(group) ?? suits(group.jar, person);
      known.set(group, suited);
      return suited || (may(variant) && asked(variant, person));
    };
  };
  return {
    count: permitted.length,
    to: (person) => permitted.map(({ variant }) => variant).filter(answering(person)),
    countAlso: (variants, person) => variants.filter(answering(person)).length,
  };
}

function jarOf([first]: readonly { readonly jar: Composition }[]): Composition {
  if (!first) throw new Error('a group has a member');
  return first.jar;
}

/** Everything in a jar that check 13 and the exposure of a larger area can speak of, exactly. */
function readOf(book: Book, jar: Composition): string {
  const { personCaps, house } = book.rulebook;
  const caps = personCaps.map(
    ({ materialClass, maxPpm }) => classPart(book, jar, materialClass) * BigInt(WHOLE_PPM) > BigInt(maxPpm) * jar.whole,
  );
  const gentle = irritancyLoad(book, jar) * BigInt(WHOLE_PPM) <= BigInt(house.gentleIrritancyUnits) * jar.whole;
  const areas = house.exposure.areas.map(({ factorPpm }) => checkExposure(book, jar, factorPpm).length === 0);
  return JSON.stringify([[...tagsIn(book, jar)].sort(), caps, gentle, areas]);
}

const largerArea = ({ areaFactorPpm }: Person) => (areaFactorPpm === null || areaFactorPpm < WHOLE_PPM ? null : areaFactorPpm);
