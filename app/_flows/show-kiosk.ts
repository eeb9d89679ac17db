// The kiosk's one page: questions, words, sizes. No recipe, no rule.
import type { Reading } from '#db/connection.ts';
import { findShop, readShop } from '#db/shop.ts';
import type { Station } from '#db/stations.ts';
import { listStations } from '#db/stations.ts';
import type { KioskQuestion } from '#lib/answers/kiosk-questions.ts';
import { kioskQuestions } from '#lib/answers/kiosk-questions.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import type { Lang } from '#lib/rulebook/language.ts';
import type { JarSize } from '#lib/rulebook/offer.ts';
import type { Outcome } from '#lib/rulebook/questionnaire.ts';
import { OUTCOMES } from '#lib/rulebook/questionnaire.ts';
import type { OpenEdition } from './edition-in-force.ts';
import { editionInForce } from './edition-in-force.ts';
import type { Flow } from './flow.ts';

/** What the browser is given of an edition, once. */
export interface KioskShown {
  readonly shopName: string;
  readonly notice: string;
  readonly lang: Lang;
  /** The questionnaire in every language on sale, the first one first. */
  readonly wordings: readonly { readonly lang: Lang; readonly questions: readonly KioskQuestion[] }[];
  readonly currency: string;
  readonly editionHash: string;
  readonly editionNo: number;
  readonly questions: readonly KioskQuestion[];
  readonly outcomesWorstFirst: readonly Outcome[];
  readonly jarSizes: readonly Pick<JarSize, 'id' | 'netUg' | 'priceMinor'>[];
}

export interface OpenKiosk {
  readonly shown: KioskShown;
  /** The counter whose orders this page places. */
  readonly counterCode: string;
}

export type KioskClosed =
  | { readonly kind: 'no-shop' | 'no-edition' | 'no-counter' }
  | { readonly kind: 'unknown-counter'; readonly counterCode: string };

/** What to show at a counter, or why this shop has nothing to show yet. A page that names no counter stands at the first one. */
export function showKiosk(flow: Flow, asked: { readonly counterCode: string | null }): Result<OpenKiosk, KioskClosed> {
  return flow.db.read((tx): Result<OpenKiosk, KioskClosed> => {
    if (!findShop(tx)) return refuse({ kind: 'no-shop' });
    const edition = editionInForce(tx, flow);
    const lang = edition?.book.rulebook.languages[0];
    if (!edition || !lang) return refuse({ kind: 'no-edition' });
    const counter = counterOf(tx, flow, asked.counterCode);
    return counter.ok ? accept({ shown: kioskShown(tx, edition, lang), counterCode: counter.value.code }) : counter;
  });
}

/** A kiosk that is signed in stands at its own counter; any other page says where it stands. */
function counterOf(tx: Reading, flow: Flow, code: string | null): Result<Station, KioskClosed> {
  const counters = listStations(tx).filter((station) => station.kind === 'kiosk');
  const { actor } = flow;
  const own = actor.kind === 'kiosk' ? counters.find((station) => station.id === actor.stationId) : undefined;
  const named = code === null ? counters[0] : counters.find((station) => station.code === code);
  const counter = own ?? named;
  if (counter) return accept(counter);
  return refuse(code === null || counters.length === 0 ? { kind: 'no-counter' } : { kind: 'unknown-counter', counterCode: code });
}

/** Within a unit of work that answers with it. */
export function kioskShown(tx: Reading, { head, book }: OpenEdition, lang: Lang): KioskShown {
  const { name, notice } = readShop(tx);
  const { rulebook } = book;
  return {
    shopName: name,
    notice,
    lang,
    wordings: rulebook.languages.map((one) => ({ lang: one, questions: kioskQuestions(rulebook, one) })),
    currency: rulebook.currency,
    editionHash: head.hash,
    editionNo: head.editionNo,
    questions: kioskQuestions(rulebook, lang),
    outcomesWorstFirst: OUTCOMES,
    jarSizes: rulebook.jarSizes.map(({ id, netUg, priceMinor }) => ({ id, netUg, priceMinor })),
  };
}
