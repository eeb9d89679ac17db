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
import type { Result } from '#lib/base/result.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import type { LocalDay } from '#lib/units/time.ts';
import { localDayIn } from '#lib/units/time.ts';
import { demoLots } from './lots.data.ts';
import { DEMO_PEOPLE } from './people.data.ts';
import { demoRulebook } from './rulebook/demo-rulebook.ts';

/** Invented, and public: a demonstration has nothing to hide from whoever runs it. */
const DEMO_SEALING_SECRET = 'demonstration-'.repeat(3);

export const DEMO_SHOP = {
  shopCode: 'ML',
  name: 'Marlpit Lane',
  zone: 'Europe/London',
  sealingSecret: DEMO_SEALING_SECRET,
  isDemo: true,
  notice: 'Invented for the demonstration',
};

/** Whoever acts next: each step is taken by the one whose job it is. */
type As = (actor: FlowActor) => Flow;

/** What a demonstration works with, on the day of its first start. */
export interface DemoContents {
  readonly rulebook: (today: LocalDay) => Rulebook;
  readonly lots: (rulebook: Rulebook, today: LocalDay) => readonly NewLot[];
}

const MARLPIT_LANE: DemoContents = { rulebook: demoRulebook, lots: demoLots };

/** Fills a shop's migrated, empty file. Throws a Fault where a step is refused. */
export async function makeDemoShop(services: Services, contents: DemoContents = MARLPIT_LANE): Promise<void> {
  const now = services.now();
  const as: As = (actor) => toFlow({ services, now, newId: services.newId, actor });
  const nobody = as({ kind: 'nobody' });
  took(
    services.db.write((tx) => insertShop(tx, nobody, DEMO_SHOP)),
    'the shop is founded',
  );
  const people = await openPeople(nobody);
  const staff = (code: string, role: 'formulator' | 'mixer'): Flow =>
    as({ kind: 'staff', accountId: people.get(code) ?? '', role, stationId: null });
  openPlaces(nobody);
  const rulebook = contents.rulebook(localDayIn(DEMO_SHOP.zone, now));
  await publishFirst({ services, rulebook, author: staff('formulator', 'formulator'), approver: staff('formulator2', 'formulator') });
  stockShelves(staff('mixer', 'mixer'), contents.lots(rulebook, localDayIn(DEMO_SHOP.zone, now)));
}

function took<T>(step: Result<T, unknown>, what: string): T {
  invariant(step.ok, `the demonstration broke where ${what}: ${JSON.stringify(step.ok ? null : step.refusal)}`);
  return step.value;
}

async function openPeople(flow: Flow): Promise<ReadonlyMap<string, string>> {
  const ids = new Map<string, string>();
  for (const { password, ...person } of DEMO_PEOPLE) {
    const { accountId } = took(
      openAccount(flow, { ...person, secretHash: await hashPassword(password) }),
      `${person.code} gets an account`,
    );
    ids.set(person.code, accountId);
  }
  return ids;
}

function openPlaces(flow: Flow): void {
  took(openStation(flow, { kind: 'kiosk', code: 'CN', name: 'Counter North' }), 'Counter North opens');
  took(openStation(flow, { kind: 'kiosk', code: 'CS', name: 'Counter South' }), 'Counter South opens');
  const { stationId } = took(openStation(flow, { kind: 'bench', code: 'B1', name: 'Bench' }), 'the bench opens');
  bindScale(flow, {
    stationId,
    profileId: 'bench-centigram',
    code: 'CG-1',
    stricterStepUg: null,
    stricterRepeatabilityUg: null,
    stricterCapacityUg: null,
  });
}

interface FirstEdition {
  readonly services: Services;
  readonly rulebook: Rulebook;
  readonly author: Flow;
  readonly approver: Flow;
}

async function publishFirst({ services, rulebook, author, approver }: FirstEdition): Promise<void> {
  took(importDraft(author, { parentRevisionNo: null, rulebook }), 'the draft is imported');
  const draft = draftToCount(approver);
  invariant(draft, 'the draft was just imported');
  const count = await services.runJob('count-variants', { document: draft.document, day: draft.day });
  invariant(count.kind === 'done', 'the first edition was counted');
  const order = {
    revisionNo: 1,
    counted: { sha256: draft.sha256, variantsCount: count.output },
    lookedAt: [],
    reason: 'First edition of the demonstration',
    effectiveAtMs: null,
  };
  took(publishEdition(approver, order), 'the first edition is published');
}

/** Everything the rulebook works with stands on the shelf, received, checked and released. */
function stockShelves(flow: Flow, lots: readonly NewLot[]): void {
  for (const lot of lots) {
    const { lotId } = took(receiveLot(flow, lot), `lot ${lot.code} comes in`);
    took(decideLot(flow, { lotId, kind: 'released', reason: 'Certificate checked' }), `lot ${lot.code} is released`);
  }
}
