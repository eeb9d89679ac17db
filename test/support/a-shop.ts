// A whole shop in memory, made through its own flows as a real one is: founded, staffed, with two counters and a bench, the small
// rulebook published as edition 1, a released lot of everything on the shelf. Made once per test file; each test gets its own copy of the bytes.

import Database from 'better-sqlite3';
import { onTestFinished } from 'vitest';
import { importDraft } from '#app/_flows/change-draft.ts';
import type { Flow, FlowActor } from '#app/_flows/flow.ts';
import { insertShop } from '#app/_flows/found-shop.ts';
import { openAccount } from '#app/_flows/open-accounts.ts';
import { bindScale, openStation } from '#app/_flows/open-station.ts';
import { draftToCount, publishEdition } from '#app/_flows/publish-edition.ts';
import { decideLot, receiveLot } from '#app/_flows/receive-lot.ts';
import { makeOpenEditions } from '#app/_server/open-editions.ts';
import { sha256 } from '#app/_server/services.ts';
import type { ShopDb } from '#db/connection.ts';
import { configure, shopDbOver } from '#db/connection.ts';
import { listAccounts } from '#db/people.ts';
import type { Role } from '#db/schema-people.ts';
import { listStationScales, listStations } from '#db/stations.ts';
import type { Result } from '#lib/base/result.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import { aDemoRulebook, TEST_DAY } from './a-demo-book.ts';
import { migratedBytes } from './shop-db.ts';
import { later, numberedIds, T0 } from './shop-facts.ts';
import { smallLots } from './small-shop/lots.data.ts';

/** Codes of the people, whose role is in the name. */
export const PEOPLE = {
  formulator: 'formulator',
  'second-formulator': 'formulator',
  mixer: 'mixer',
  'second-mixer': 'mixer',
  checker: 'checker',
  manager: 'manager',
} as const satisfies Record<string, Role>;
export type Person = keyof typeof PEOPLE;

export interface AShop {
  readonly db: ShopDb;
  readonly sqlite: Database.Database;
  /** The frame of a flow for a person, some minutes after the shop was made. */
  readonly as: (person: Person, minutes?: number) => Flow;
  readonly asNobody: (minutes?: number) => Flow;
  readonly accountId: (person: Person) => string;
  readonly kioskId: string;
  readonly benchId: string;
  readonly scaleId: string;
}

/** The value of a step that must not be refused. */
export function took<T>(step: Result<T, unknown>): T {
  if (!step.ok) throw new Error(`refused: ${JSON.stringify(step.refusal)}`);
  return step.value;
}

const made = new Map<string, Buffer>();
const editions = makeOpenEditions();

/** @param bend changes the demonstration's rulebook before it is published; give each bend its own name */
export function aShop(name = 'demo', bend: (rulebook: Rulebook) => Rulebook = (rulebook) => rulebook): AShop {
  const bytes = made.get(name) ?? makeShop(bend(aDemoRulebook()));
  made.set(name, bytes);
  const sqlite = new Database(bytes);
  configure(sqlite);
  onTestFinished(() => void sqlite.close());
  return openShop(sqlite, 100_000);
}

function openShop(sqlite: Database.Database, firstId: number): AShop {
  const db = shopDbOver(sqlite);
  const newId = numberedIds(firstId);
  const frame = (actor: FlowActor, minutes: number): Flow => ({ db, now: later(minutes), newId, sha256, actor, editions });
  const found = db.read((tx) => {
    const stations = listStations(tx);
    const benchId = stations.find((one) => one.kind === 'bench')?.id ?? '';
    const kioskId = stations.find((one) => one.kind === 'kiosk')?.id ?? '';
    return {
      benchId,
      kioskId,
      scaleId: listStationScales(tx, benchId)[0]?.id ?? '',
      people: new Map(listAccounts(tx).map((one) => [one.code, one.id])),
    };
  });
  const accountId = (person: Person): string => found.people.get(person) ?? '';
  return {
    db,
    sqlite,
    as: (person, minutes = 0) => frame({ kind: 'staff', accountId: accountId(person), role: PEOPLE[person], stationId: null }, minutes),
    asNobody: (minutes = 0) => frame({ kind: 'nobody' }, minutes),
    accountId,
    kioskId: found.kioskId,
    benchId: found.benchId,
    scaleId: found.scaleId,
  };
}

function makeShop(rulebook: Rulebook): Buffer {
  const sqlite = new Database(migratedBytes());
  configure(sqlite);
  const db = shopDbOver(sqlite);
  const newId = numberedIds();
  const flow: Flow = { db, now: T0, newId, sha256, actor: { kind: 'nobody' }, editions };
  const shop = {
    shopCode: 'ML',
    name: 'Marlpit Lane',
    zone: 'Europe/London',
    sealingSecret: 'test'.repeat(12),
    isDemo: true,
    notice: 'Invented',
  };
  took(db.write((tx) => insertShop(tx, flow, shop)));
  const ids = Object.entries(PEOPLE).map(
    ([code, role]) => took(openAccount(flow, { code, name: code, role, secretHash: '$argon2id$none' })).accountId,
  );
  const [author = '', approver = '', mixer = ''] = ids;
  const staff = (accountId: string, role: Role): Flow => ({ ...flow, actor: { kind: 'staff', accountId, role, stationId: null } });
  openPlaces(flow);
  took(importDraft(staff(author, 'formulator'), { parentRevisionNo: null, rulebook }));
  const draft = draftToCount(flow);
  if (!draft) throw new Error('no draft');
  const counted = { sha256: draft.sha256, variantsCount: 1 };
  took(
    publishEdition(staff(approver, 'formulator'), {
      revisionNo: 1,
      counted,
      lookedAt: ['first-edition'],
      reason: 'First edition',
      effectiveAtMs: null,
    }),
  );
  for (const lot of smallLots(rulebook, TEST_DAY)) {
    const { lotId } = took(receiveLot(staff(mixer, 'mixer'), lot));
    took(decideLot(staff(mixer, 'mixer'), { lotId, kind: 'released', reason: 'certificate checked' }));
  }
  const bytes = sqlite.serialize();
  sqlite.close();
  return bytes;
}

function openPlaces(flow: Flow): void {
  took(openStation(flow, { kind: 'kiosk', code: 'CN', name: 'Counter North' }));
  took(openStation(flow, { kind: 'kiosk', code: 'CS', name: 'Counter South' }));
  const { stationId } = took(openStation(flow, { kind: 'bench', code: 'B1', name: 'Bench' }));
  bindScale(flow, {
    stationId,
    profileId: 'bench-centigram',
    code: 'CG-1',
    stricterStepUg: null,
    stricterRepeatabilityUg: null,
    stricterCapacityUg: null,
  });
}
