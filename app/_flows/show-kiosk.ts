// The kiosk's one page: questions, words, sizes. No recipe, no rule.
import { readShop, findShop } from '#db/shop.ts';
import { listStations } from '#db/stations.ts';
import type { KioskShow } from '#lib/answers/kiosk-questions.ts';
import { kioskQuestions } from '#lib/answers/kiosk-questions.ts';
import { editionInForce } from './edition-in-force.ts';
import type { Flow } from './flow.ts';

export type KioskClosed = { readonly kind: 'no-shop' | 'no-edition' | 'no-counter' };

/** What to show, or why this shop has nothing to show yet. */
export function showKiosk(flow: Flow): KioskShow | KioskClosed {
  return flow.db.read((tx): KioskShow | KioskClosed => {
    if (!findShop(tx)) return { kind: 'no-shop' };
    const edition = editionInForce(tx, flow);
    const [jarSize] = edition?.book.rulebook.jarSizes ?? [];
    const lang = edition?.book.rulebook.languages[0];
    if (!edition || !jarSize || !lang) return { kind: 'no-edition' };
    if (!listStations(tx).some((station) => station.kind === 'kiosk')) return { kind: 'no-counter' };
    const { name, notice } = readShop(tx);
    const { rulebook } = edition.book;
    return { shopName: name, notice, lang, currency: rulebook.currency, editionHash: edition.head.hash, questions: kioskQuestions(rulebook, lang), jarSizeId: jarSize.id, jarNetUg: jarSize.netUg };
  });
}
