// The demonstration's half year: made by the flows alone, the same every time, and with everything in it that a shop meets.
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { DemoContents } from '#app/_cli/demo/make-demo-shop.ts';
import { MARLPIT_LANE, makeDemoShop } from '#app/_cli/demo/make-demo-shop.ts';
import { exportSales } from '#app/_flows/export-sales.ts';
import type { Flow } from '#app/_flows/flow.ts';
import { readRulebook } from '#app/_flows/read-rulebook.ts';
import { showComplaints } from '#app/_flows/show-complaints.ts';
import { showQueue } from '#app/_flows/show-queue.ts';
import { showSales } from '#app/_flows/show-sales.ts';
import { showStops } from '#app/_flows/show-stops.ts';
import { runHere } from '#app/_server/run-here.ts';
import type { Services } from '#app/_server/services.ts';
import { openServices } from '#app/_server/services.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import type { LedgerFact } from '#db/ledger.ts';
import { listLedger } from '#db/ledger.ts';
import { listStandingLots } from '#db/lots.ts';
import { migrateShop } from '#db/migrate.ts';
import { shopFile } from '#db/paths.ts';
import { findRelease } from '#db/releases.ts';
import { listStations } from '#db/stations.ts';
import { listJarsOfLot, listLotsOfJar } from '#db/trace.ts';
import { verifyShop } from '#db/verify.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import { moneyMinor } from '#lib/units/money.ts';
import { freshFolder } from '#test/support/shop-db.ts';
import { idOf, numberedIds, T0 } from '#test/support/shop-facts.ts';
import { smallRulebook } from '#test/support/small-shop/small-rulebook.ts';

const HISTORY = fileURLToPath(new URL('../../app/_cli/demo/history', import.meta.url));

interface Made {
  readonly dataDir: string;
  readonly services: Services;
  readonly facts: readonly LedgerFact[];
}

/** On a fixed morning, with ids that are counted. */
async function shopWithPast(dataDir: string, contents: DemoContents): Promise<Made> {
  migrateShop(dataDir);
  const services = openServices({ dataDir, now: () => T0, newId: numberedIds(), runJob: runHere, isInTheMaking: true });
  await makeDemoShop(services, contents);
  return { dataDir, services, facts: services.db.read((tx) => listLedger(tx, 0, 100_000)) };
}

/** Something has to change, or there is nothing to publish again. */
const dearer = (rulebook: Rulebook): Rulebook => ({
  ...rulebook,
  shades: rulebook.shades.map((shade) => ({ ...shade, priceMinor: moneyMinor(shade.priceMinor + 10) })),
});

/** A small rulebook, which knows little of what the story names. */
const SOME_DAYS: DemoContents = {
  rulebook: smallRulebook,
  shelf: { kind: 'past', daysCount: 16, rulebookThen: dearer },
};

describe('a past of some days', () => {
  test('is the same each time: every fact, to the last byte', async () => {
    const ledgerOf = async (): Promise<readonly string[]> => {
      const { services, facts } = await shopWithPast(freshFolder(), SOME_DAYS);
      services.db.close();
      return facts.map(({ row }) => `${row.kind} ${row.atMs} ${row.bodySha256}`);
    };
    const first = await ledgerOf();
    expect(first.filter((line) => line.startsWith('jar-released')).length).toBeGreaterThan(3);
    expect(await ledgerOf()).toEqual(first);
  });
});

test('whoever tells the past only looks at rows; writing them is left to the flows', () => {
  const files = readdirSync(HISTORY);
  expect(files.length).toBeGreaterThan(3);
  const taken = files.flatMap((file) =>
    [...readFileSync(join(HISTORY, file), 'utf8').matchAll(/^import \{([^}]*)\} from '#db\//gm)].flatMap(([, names = '']) =>
      names.split(',').map((name) => name.trim()),
    ),
  );
  expect(taken.length).toBeGreaterThan(0);
  expect(taken.filter((name) => !/^(find|list)[A-Z]/.test(name))).toEqual([]);
});

describe('half a year', () => {
  const folder = mkdtempSync(join(tmpdir(), 'jarwright-past-'));
  let made: Made;
  const office = (): Flow =>
    toFlow({
      services: made.services,
      now: T0,
      newId: numberedIds(900_000),
      actor: { kind: 'staff', accountId: idOf(1), role: 'manager', stationId: null },
    });
  const bench = (): Flow => {
    const stationId = made.services.db.read(listStations).find(({ kind }) => kind === 'bench')?.id ?? null;
    return { ...office(), actor: { kind: 'staff', accountId: idOf(1), role: 'mixer', stationId } };
  };
  const count = (kind: string): number => made.facts.filter(({ row }) => row.kind === kind).length;

  beforeAll(async () => {
    made = await shopWithPast(folder, MARLPIT_LANE);
  }, 400_000);
  afterAll(() => {
    made.services.db.close();
    rmSync(folder, { recursive: true });
  });

  test('is sound', () => expect(verifyShop(shopFile(made.dataDir), null).problems).toEqual([]));

  test('has 250 to 400 orders, most of them made and fetched', () => {
    expect(count('order-placed')).toBeGreaterThanOrEqual(250);
    expect(count('order-placed')).toBeLessThanOrEqual(400);
    expect(count('order-collected')).toBeGreaterThan(0.85 * count('order-placed'));
  });

  test.each([
    'lot-received lot-released lot-held lot-rejected lot-spent',
    'order-held order-lapsed order-cancelled order-given-back order-taken-over order-remade',
    'fitness-checked weighed taken-out jar-grown reading-voided jar-discarded ph-corrected',
    'jar-released jar-held held-jar-discarded label-printed',
    'stop-placed stop-lifted edition-published card-issued',
    'complaint-filed complaint-jar-returned complaint-told-responsible-person complaint-closed',
  ])('has each of: %s', (kinds) => expect(kinds.split(' ').filter((kind) => count(kind) === 0)).toEqual([]));

  test('sells many masks in many colours, some of them often', () => {
    const { combinations, jarsCount } = showSales(office());
    expect(jarsCount).toBeGreaterThan(200);
    expect(combinations.length).toBeGreaterThan(30);
    expect(combinations.some((one) => one.jarsCount >= 8)).toBe(true);
    expect(Math.max(...combinations.map((one) => one.jarsCount))).toBeLessThan(jarsCount / 4);
    expect(new Set(combinations.map((one) => one.variantKey.split('|')[0])).size).toBeGreaterThanOrEqual(6);
    expect(exportSales(office()).rows.some((row) => row.jarsCount === null)).toBe(true);
  });

  test('nothing that went out broke a rule', () => {
    const codes = made.facts.filter(({ row }) => row.kind === 'jar-released').map(({ body }) => String(JSON.parse(body ?? '{}').jarCode));
    const releases = made.services.db.read((tx) => codes.map((code) => findRelease(tx, code)));
    expect(releases.filter((release) => release?.outcome !== 'released' || release.findings.length > 0)).toEqual([]);
  });

  test('had a stop of each kind, all lifted but that of the recalled lot, whose jars are found both ways', () => {
    const { rows } = showStops(office());
    expect(rows.map(({ stop }) => stop.subjectKind).sort()).toEqual(['active', 'lot', 'material', 'pair', 'shade', 'variant']);
    const inForce = rows.filter(({ lifted }) => !lifted).map(({ stop }) => stop);
    expect(inForce.map(({ subjectKind }) => subjectKind)).toEqual(['lot']);
    const lotId = inForce[0]?.subjectId ?? '';
    const jars = made.services.db.read((tx) => listJarsOfLot(tx, lotId));
    expect(jars.length).toBeGreaterThan(2);
    const lots = made.services.db.read((tx) => jars.map(({ jarCode }) => listLotsOfJar(tx, jarCode).map((lot) => lot.lotId)));
    expect(lots.every((ids) => ids.includes(lotId))).toBe(true);
  });

  test('heard about ten complaints, one of them serious', () => {
    const complaints = showComplaints(office());
    expect(complaints.length).toBeGreaterThanOrEqual(7);
    expect(complaints.filter(({ complaint }) => complaint.seriousness === 'serious').length).toBe(1);
    expect(complaints.every(({ steps }) => steps.length > 0)).toBe(true);
  });

  test('leaves today with orders that wait, are in hand, on hold and ready, and a full shelf', () => {
    const stages = showQueue(bench()).rows.map(({ stage }) => stage);
    expect(stages).toEqual(expect.arrayContaining(['placed', 'mixing', 'jar-held', 'ready']));
    const { inForce } = readRulebook(office());
    const lots = made.services.db.read(listStandingLots);
    const usable = new Set(lots.filter(({ status }) => status === 'released').map(({ lot }) => lot.refId));
    expect(inForce?.book.rulebook.stocks.filter(({ id }) => !usable.has(id)).map(({ id }) => id)).toEqual([]);
    expect(new Set(lots.map(({ status }) => status))).toEqual(new Set(['quarantine', 'released', 'held']));
  });

  test('is over before today is: nothing is dated later than the start', () => {
    expect(made.facts.filter(({ row }) => row.atMs > T0)).toEqual([]);
    expect(made.facts.map(({ row }) => row.atMs)).toEqual(made.facts.map(({ row }) => row.atMs).toSorted((a, b) => a - b));
  });
});
