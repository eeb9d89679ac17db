// What every call of a visit begins with: its edition must still be in force, and its answers must fit it.
import type { Reading } from '#db/connection.ts';
import type { Person } from '#lib/answers/person.ts';
import type { Answer, AnswerFault } from '#lib/answers/read-answers.ts';
import { readAnswers } from '#lib/answers/read-answers.ts';
import { canonicalJson } from '#lib/base/canonical-json.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import type { Lang } from '#lib/rulebook/language.ts';
import type { JarSize } from '#lib/rulebook/offer.ts';
import type { JudgeContext } from '#lib/verdict/verdict.ts';
import type { OpenEdition } from './edition-in-force.ts';
import { editionByHash, editionInForce } from './edition-in-force.ts';
import type { Flow } from './flow.ts';
import type { ShopStand } from './shop-context.ts';
import { readShopStand, shopChecks } from './shop-context.ts';
import type { KioskShown } from './show-kiosk.ts';
import { kioskShown } from './show-kiosk.ts';

export interface VisitAsked {
  readonly editionHash: string;
  readonly lang: Lang;
  readonly jarSizeId: string;
  readonly answers: readonly Answer[];
}

export interface OpenVisit {
  readonly edition: OpenEdition;
  readonly lang: Lang;
  readonly person: Person;
  readonly jarSize: JarSize;
  readonly stand: ShopStand;
  /** All fifteen checks: this person, this bench, this shop. */
  readonly context: JudgeContext;
}

export type Changed = 'questions' | 'mask' | 'price' | 'cautions';

export interface EditionMoved {
  readonly kind: 'edition-moved';
  readonly show: KioskShown;
  readonly changed: readonly Changed[];
}

export type VisitRefusal =
  | EditionMoved
  | { readonly kind: 'not-open' | 'no-such-size' | 'no-such-language' }
  | { readonly kind: 'bad-answers'; readonly faults: readonly AnswerFault[] };

/** Opens a visit under the edition it was begun with. */
export function openVisit(tx: Reading, flow: Flow, asked: VisitAsked): Result<OpenVisit, VisitRefusal> {
  const edition = editionInForce(tx, flow);
  if (!edition) return refuse({ kind: 'not-open' });
  if (edition.head.hash !== asked.editionHash) return refuse(editionMoved(tx, flow, { asked, edition, changed: [] }));
  return visitUnder(tx, flow, edition, asked);
}

/** The same under an edition that the caller has chosen. The answers become a person for the length of one call; nothing of them is kept. */
export function visitUnder(tx: Reading, flow: Flow, edition: OpenEdition, asked: VisitAsked): Result<OpenVisit, VisitRefusal> {
  const { book } = edition;
  if (!book.rulebook.languages.includes(asked.lang)) return refuse({ kind: 'no-such-language' });
  const jarSize = book.jarSizes.get(asked.jarSizeId);
  if (!jarSize) return refuse({ kind: 'no-such-size' });
  const read = readAnswers(book.rulebook, asked.answers);
  if (!read.ok) return refuse({ kind: 'bad-answers', faults: read.refusal });
  const stand = readShopStand(tx, flow, book);
  const context = { day: stand.day, person: read.value, ...shopChecks(book, stand, jarSize) };
  return accept({ edition, lang: asked.lang, person: read.value, jarSize, stand, context });
}

interface Moving {
  readonly asked: VisitAsked;
  readonly edition: OpenEdition;
  readonly changed: readonly Changed[];
}

/** What to show from now on, in the language of the visit where it is still on sale. */
export function editionMoved(tx: Reading, flow: Flow, { asked, edition, changed }: Moving): EditionMoved {
  const { languages } = edition.book.rulebook;
  const lang = languages.find((one) => one === asked.lang) ?? languages[0] ?? asked.lang;
  const show = kioskShown(tx, edition, lang);
  const before = editionByHash(tx, flow, asked.editionHash);
  const hasSameQuestions =
    before?.book.rulebook.languages.includes(lang) === true && asJson(kioskShown(tx, before, lang).questions) === asJson(show.questions);
  return { kind: 'edition-moved', show, changed: [...(hasSameQuestions ? [] : (['questions'] as const)), ...changed] };
}

const asJson = (value: unknown): string => canonicalJson(value);
