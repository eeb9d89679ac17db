// The demonstration's rulebook as one checked document. Everything in it is invented, and the document says so itself.
import { invariant } from '#lib/base/invariant.ts';
import { parseRulebook } from '#lib/contracts/rulebook.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import type { LocalDay } from '#lib/units/time.ts';
import { ACTIVES } from './actives.data.ts';
import { BASE, HOUSE } from './base.data.ts';
import { CAUTIONS, CROSS_CONTACTS } from './cautions.data.ts';
import { demoDates } from './dates.ts';
import { judgementData } from './judgements.data.ts';
import { LIMITS, marketData } from './limits.data.ts';
import { MATERIALS } from './materials.data.ts';
import { MATERIALS_FR, STOCKS_FR } from './names.fr.data.ts';
import { JAR_SIZES, LABEL_SIZES, SCALE_PROFILES, VESSELS } from './offers.data.ts';
import { CONCERNS, PERSON_CAPS, QUESTIONS } from './questionnaire.data.ts';
import { SHADES } from './shades.data.ts';
import { STOCKS } from './stocks.data.ts';
import { SUBSTANCES } from './substances.data.ts';
import { TEXTS_EN } from './texts.en.data.ts';
import { TEXTS_FR } from './texts.fr.data.ts';
import { TEXTS_OFFER_EN } from './texts-offer.en.data.ts';
import { TEXTS_OFFER_FR } from './texts-offer.fr.data.ts';

/** The document in its wire form, dated from the day of the shop's first start. */
export function demoRulebookDocument(startDay: LocalDay): unknown {
  const dates = demoDates(startDay);
  return {
    schemaVersion: 1,
    code: 'marlpit-lane',
    title: 'Marlpit Lane, masks on Base R2',
    notice: 'Invented for the demonstration',
    currency: 'GBP',
    languages: ['en', 'fr'],
    base: BASE,
    house: HOUSE,
    substances: SUBSTANCES,
    materials: MATERIALS.map((material) => ({ ...material, name: { ...material.name, fr: MATERIALS_FR[material.id] } })),
    stocks: STOCKS.map((stock) => ({ ...stock, name: { ...stock.name, fr: stockNameFr(stock) } })),
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
    texts: { en: { ...TEXTS_EN, ...TEXTS_OFFER_EN }, fr: { ...TEXTS_FR, ...TEXTS_OFFER_FR } },
  };
}

/** A blend is named after its shade, a neat stock after its material, any other by itself. */
function stockNameFr({ id, isBlend, parts }: (typeof STOCKS)[number]): string | undefined {
  const shade = isBlend ? SHADES.find((one) => id === `${one.id}-blend`) : undefined;
  return shade ? `${shade.name.fr}, mélange sec` : (STOCKS_FR[id] ?? MATERIALS_FR[parts[0]?.materialId ?? '']);
}

/** The same, parsed. Throws a Fault if the demonstration breaks its own contract. */
export function demoRulebook(startDay: LocalDay): Rulebook {
  const parsed = parseRulebook(JSON.parse(JSON.stringify(demoRulebookDocument(startDay))));
  invariant(parsed.ok, `the demonstration's rulebook is malformed: ${JSON.stringify(parsed.ok ? null : parsed.refusal.slice(0, 5))}`);
  return parsed.value;
}
