// A small rulebook that tests work with: three shades, four actives, a few of every kind of rule. Invented; its figures are plausible, not measured.
import { invariant } from '#lib/base/invariant.ts';
import { parseRulebook } from '#lib/contracts/rulebook.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import type { LocalDay } from '#lib/units/time.ts';
import { BASE, HOUSE } from './base.data.ts';
import { demoDates } from './dates.ts';
import { judgementData } from './judgements.data.ts';
import { LIMITS, marketData } from './limits.data.ts';
import { MATERIALS } from './materials.data.ts';
import { ACTIVES, JAR_SIZES, LABEL_SIZES, SCALE_PROFILES, SHADES, VESSELS } from './offers.data.ts';
import { CAUTIONS, CONCERNS, CROSS_CONTACTS, PERSON_CAPS, QUESTIONS } from './questionnaire.data.ts';
import { STOCKS } from './stocks.data.ts';
import { SUBSTANCES } from './substances.data.ts';
import { TEXTS_EN } from './texts.en.data.ts';

/** The document in its wire form, dated from the day of the shop's first start. */
export function smallRulebookDocument(startDay: LocalDay): unknown {
  const dates = demoDates(startDay);
  return {
    schemaVersion: 1,
    code: 'marlpit-lane',
    title: 'Marlpit Lane, masks on Base R2',
    notice: 'Invented for the demonstration',
    currency: 'GBP',
    languages: ['en'],
    base: BASE,
    house: HOUSE,
    substances: SUBSTANCES,
    materials: MATERIALS,
    stocks: STOCKS,
    shades: SHADES,
    actives: ACTIVES,
    ...judgementData(dates),
    limits: LIMITS,
    markets: marketData(dates),
    concerns: CONCERNS,
    questions: QUESTIONS,
    personCaps: PERSON_CAPS,
    crossContacts: CROSS_CONTACTS,
    cautions: CAUTIONS,
    jarSizes: JAR_SIZES,
    vessels: VESSELS,
    labelSizes: LABEL_SIZES,
    scaleProfiles: SCALE_PROFILES,
    texts: { en: TEXTS_EN },
  };
}

/** The same, parsed. Throws a Fault if it breaks its own contract. */
export function smallRulebook(startDay: LocalDay): Rulebook {
  const parsed = parseRulebook(JSON.parse(JSON.stringify(smallRulebookDocument(startDay))));
  invariant(parsed.ok, `the small rulebook is malformed: ${JSON.stringify(parsed.ok ? null : parsed.refusal.slice(0, 5))}`);
  return parsed.value;
}
