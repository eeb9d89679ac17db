// Makes the demonstration shop through the same flows that a real shop goes through: nothing is written that a person could not have done.

import { importDraft } from '#app/_flows/change-draft.ts';
import type { Flow, FlowActor } from '#app/_flows/flow.ts';
import { insertShop } from '#app/_flows/found-shop.ts';
import { openAccount } from '#app/_flows/open-accounts.ts';
import { bindScale, openStation } from '#app/_flows/open-station.ts';
import { draftToCount, publishEdition } from '#app/_flows/publish-edition.ts';
import type { NewLot } from '#app/_flows/receive-lot.ts';
import { decideLot, receiveLot } from '#app/_flows/receive-lot.ts';
import { hashPassword } from '#app/_server/password.ts';
import type { Services } from '#app/_server/services.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import { invariant } from '#lib/base/invariant.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import type { LocalDay } from '#lib/units/time.ts';
import { addDays, instantMs, localDayIn } from '#lib/units/time.ts';
import type { Stage } from './history/stage.ts';
import { as as actAs, DEMO_ZONE, went } from './history/stage.ts';
import { PAST_DAYS, tellPast } from './history/tell-past.ts';
import { DEMO_PEOPLE } from './people.data.ts';
import { demoRulebook } from './rulebook/demo-rulebook.ts';
import { firstRulebook } from './rulebook/first-rulebook.ts';

/** Invented, and public: a demonstration has nothing to hide from whoever runs it. */
const DEMO_SEALING_SECRET = 'demonstration-'.repeat(3);

export const DEMO_SHOP = {
  shopCode: 'ML',
  name: 'Marlpit Lane',
  zone: DEMO_ZONE,
  sealingSecret: DEMO_SEALING_SECRET,
  isDemo: true,
  notice: 'Invented for the demonstration',
};

/** Whoever acts next: each step is taken by the one whose job it is. */
type As = (actor: FlowActor) => Flow;

/** What a demonstration works with, on the day of its first start. */
export interface DemoContents {
  readonly rulebook: (today: LocalDay) => Rulebook;
  readonly shelf: Shelf;
}

/** What stands on the shelves today: put there at once, or what half a year of trade has left. */
type Shelf =
  | { readonly kind: 'fresh'; readonly lots: (rulebook: Rulebook, today: LocalDay) => readonly NewLot[] }
  | { readonly kind: 'past'; readonly daysCount: number; readonly rulebookThen: (rulebook: Rulebook) => Rulebook };

export const MARLPIT_LANE = {
  rulebook: demoRulebook,
  shelf: { kind: 'past', daysCount: PAST_DAYS, rulebookThen: firstRulebook },
} as const satisfies DemoContents;

/** Fills a shop's migrated, empty file. Throws a Fault where a step is refused. */
export async function makeDemoShop(services: Services, contents: DemoContents = MARLPIT_LANE): Promise<void> {
  const now = services.now();
  const today = localDayIn(DEMO_SHOP.zone, now);
  const { shelf } = contents;
  const firstDay = shelf.kind === 'past' ? addDays(today, -shelf.daysCount) : today;
  const founded = shelf.kind === 'past' ? instantMs(Date.parse(`${firstDay}T07:00:00Z`)) : now;
  const as: As = (actor) => toFlow({ services, now: founded, newId: services.newId, actor });
  const nobody = as({ kind: 'nobody' });
  went(
    services.db.write((tx) => insertShop(tx, nobody, DEMO_SHOP)),
    'the shop is founded',
  );
  const people = await openPeople(nobody);
  const accountId = (code: string): string => people.get(code) ?? '';
  const staff = (code: string, role: 'formulator' | 'mixer'): Flow =>
    as({ kind: 'staff', accountId: accountId(code), role, stationId: null });
  const { benchId } = openPlaces(nobody);
  const rulebook = contents.rulebook(firstDay);
  const first = shelf.kind === 'past' ? shelf.rulebookThen(rulebook) : rulebook;
  await publish({
    services,
    rulebook: first,
    author: staff('formulator', 'formulator'),
    approver: staff('formulator2', 'formulator'),
    revisionNo: 1,
    lookedAt: [],
  });
  if (shelf.kind === 'fresh') return stockShelves(staff('mixer', 'mixer'), shelf.lots(rulebook, today));
  const backBenchId = openBench(nobody, 2, 'Back bench');
  const publishAgain = (stage: Stage): Promise<void> =>
    publish({
      services,
      rulebook,
      author: actAs(stage, 'formulator'),
      approver: actAs(stage, 'formulator2'),
      revisionNo: 2,
      lookedAt: ['pairJudgements/urea-tea'],
    });
  await tellPast({ services, firstDay, today, now, rulebook, accountId, benchId, backBenchId, publishAgain });
}

async function openPeople(flow: Flow): Promise<ReadonlyMap<string, string>> {
  const ids = new Map<string, string>();
  for (const { password, ...person } of DEMO_PEOPLE) {
    const { accountId } = went(
      openAccount(flow, { ...person, secretHash: await hashPassword(password) }),
      `${person.code} gets an account`,
    );
    ids.set(person.code, accountId);
  }
  return ids;
}

function openPlaces(flow: Flow): { readonly benchId: string } {
  went(openStation(flow, { kind: 'kiosk', code: 'CN', name: 'Counter North' }), 'Counter North opens');
  went(openStation(flow, { kind: 'kiosk', code: 'CS', name: 'Counter South' }), 'Counter South opens');
  return { benchId: openBench(flow, 1, 'Bench') };
}

function openBench(flow: Flow, no: number, name: string): string {
  const { stationId } = went(openStation(flow, { kind: 'bench', code: `B${no}`, name }), `${name} opens`);
  const asProfiled = { stationId, stricterStepUg: null, stricterRepeatabilityUg: null, stricterCapacityUg: null };
  bindScale(flow, { ...asProfiled, profileId: 'bench-centigram', code: `CG-${no}` });
  bindScale(flow, { ...asProfiled, profileId: 'bench-milligram', code: `MG-${no}` });
  return stationId;
}

interface NewEdition {
  readonly services: Services;
  readonly rulebook: Rulebook;
  readonly author: Flow;
  readonly approver: Flow;
  readonly revisionNo: number;
  /** Changes that may widen use; the approver has read them. */
  readonly lookedAt: readonly string[];
}

async function publish({ services, rulebook, author, approver, revisionNo, lookedAt }: NewEdition): Promise<void> {
  const parentRevisionNo = revisionNo === 1 ? null : revisionNo - 1;
  went(importDraft(author, { parentRevisionNo, rulebook }), 'the draft is imported');
  const draft = draftToCount(approver);
  invariant(draft, 'the draft was just imported');
  const count = await services.runJob('count-variants', { document: draft.document, day: draft.day });
  invariant(count.kind === 'done', 'the edition was counted');
  const order = {
    revisionNo,
    counted: { sha256: draft.sha256, variantsCount: count.output },
    lookedAt,
    reason: revisionNo === 1 ? 'First edition of the demonstration' : 'After four months: one level withdrawn, one pair limited, one price',
    effectiveAtMs: null,
  };
  went(publishEdition(approver, order), 'the edition is published');
}

/** Everything the rulebook works with stands on the shelf, received, checked and released. */
function stockShelves(flow: Flow, lots: readonly NewLot[]): void {
  for (const lot of lots) {
    const { lotId } = went(receiveLot(flow, lot), `lot ${lot.code} comes in`);
    went(decideLot(flow, { lotId, kind: 'released', reason: 'Certificate checked' }), `lot ${lot.code} is released`);
  }
}
