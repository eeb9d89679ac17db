// What an order may count on: the mask as it is permitted, priced and cautioned at this moment. When another edition has come into force
// since the customer chose, the order still stands if nothing that the customer saw is different.
import type { Reading } from '#db/connection.ts';
import { canonicalJson } from '#lib/base/canonical-json.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import type { Plan, Variant } from '#lib/rulebook/variant.ts';
import type { MoneyMinor } from '#lib/units/money.ts';
import { priceOf } from '#lib/variants/price.ts';
import { judgeVariant } from '#lib/verdict/judge.ts';
import type { OpenEdition } from './edition-in-force.ts';
import { editionByHash, editionInForce } from './edition-in-force.ts';
import type { Flow } from './flow.ts';
import type { OwedAtKiosk } from './owed-cautions.ts';
import { owedCautions } from './owed-cautions.ts';
import type { Changed, OpenVisit, VisitAsked, VisitRefusal } from './visit-question.ts';
import { editionMoved, visitUnder } from './visit-question.ts';

export interface Offer {
  readonly visit: OpenVisit;
  readonly plan: Plan;
  readonly priceMinor: MoneyMinor;
  readonly owed: OwedAtKiosk;
}

export type OfferRefusal = VisitRefusal | { readonly kind: 'no-longer-offered' };

type Asked = VisitAsked & { readonly variant: Variant };

/** The offer under the edition in force, or what keeps it from being what the customer chose. */
export function offerNow(tx: Reading, flow: Flow, asked: Asked): Result<Offer, OfferRefusal> {
  const edition = editionInForce(tx, flow);
  if (!edition) return refuse({ kind: 'not-open' });
  const offer = offerUnder(tx, flow, edition, asked);
  if (edition.head.hash === asked.editionHash) return offer;
  const changed = whatChanged(tx, flow, asked, offer);
  return offer.ok && changed.length === 0 ? offer : refuse(editionMoved(tx, flow, { asked, edition, changed }));
}

function offerUnder(tx: Reading, flow: Flow, edition: OpenEdition, asked: Asked): Result<Offer, OfferRefusal> {
  const visit = visitUnder(tx, flow, edition, asked);
  if (!visit.ok) return visit;
  const { book } = edition;
  const { person, context, jarSize, lang } = visit.value;
  const { plan, verdict } = judgeVariant(book, asked.variant, context);
  if (!plan || verdict.kind !== 'permitted' || person.outcomes.length > 0) return refuse({ kind: 'no-longer-offered' });
  const owed = owedCautions(book, { plan, day: context.day, person, lang, ofVerdict: verdict.cautions });
  return accept({ visit: visit.value, plan, priceMinor: priceOf(book, asked.variant, jarSize.id), owed });
}

/** What differs from what the customer saw. An edition that this shop never had cannot have been seen. */
function whatChanged(tx: Reading, flow: Flow, asked: Asked, now: Result<Offer, OfferRefusal>): readonly Changed[] {
  const seen = editionByHash(tx, flow, asked.editionHash);
  const before = seen ? offerUnder(tx, flow, seen, asked) : null;
  if (!now.ok) return now.refusal.kind === 'bad-answers' ? [] : ['mask'];
  if (!before?.ok) return ['mask'];
  const { value } = before;
  return [
    ...(value.priceMinor === now.value.priceMinor ? [] : (['price'] as const)),
    ...(canonicalJson(value.owed.cautions) === canonicalJson(now.value.owed.cautions) ? [] : (['cautions'] as const)),
  ];
}
