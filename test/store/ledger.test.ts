// The ledger's chain: written in one piece, read from anywhere, and no row can be touched unseen.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { LedgerRow } from '#db/ledger.ts';
import { appendLedger, headerSha256, lastLedgerRow, ledgerSeqNo, listLedger, NO_ROW_SHA256 } from '#db/ledger.ts';
import { sha256 } from '#db/sha256.ts';
import { verifyLedger } from '#db/verify-ledger.ts';
import { shopWithEdition } from '#test/support/founded-shop.ts';
import type { TestShop } from '#test/support/shop-db.ts';
import { freshShop } from '#test/support/shop-db.ts';
import { idOf, stampAt } from '#test/support/shop-facts.ts';

const ROWS_COUNT = 6;

/** A shop whose ledger holds rows about nothing much. */
function withRows(): TestShop {
  const shop = shopWithEdition();
  shop.db.write((tx) => {
    for (let no = 1; no <= ROWS_COUNT; no += 1)
      appendLedger(tx, {
        ...stampAt(no),
        id: idOf(no),
        kind: 'noted',
        schemaVersionNo: 1,
        body: { no },
        accountId: null,
        stationId: null,
        editionHash: null,
      });
  });
  return shop;
}

/** Somebody with a tool of their own: no trigger, no foreign key stops them. */
function tamper({ sqlite }: TestShop, sql: string): void {
  sqlite.pragma('foreign_keys = OFF');
  for (const table of ['ledger', 'ledger_body', 'purged'])
    for (const guard of ['update', 'delete']) sqlite.exec(`DROP TRIGGER IF EXISTS ${table}_no_${guard}`);
  sqlite.exec(sql);
}

const problemsOf = ({ db }: TestShop): readonly string[] => db.read(verifyLedger).problems;

describe('writing', () => {
  test('numbers rows without a gap and chains each to the one before', () => {
    const { db } = withRows();
    const rows = db.read((tx) => listLedger(tx, 0, 100)).map(({ row }) => row);
    expect(rows.map(({ seqNo }) => seqNo)).toEqual([1, 2, 3, 4, 5, 6]);
    expect(rows.map(({ prevSha256 }) => prevSha256)).toEqual([NO_ROW_SHA256, ...rows.slice(0, -1).map(({ rowSha256 }) => rowSha256)]);
    expect(rows[0]).toMatchObject({ incarnationId: idOf(900), bodySha256: sha256('{"no":1}'), isoWeek: 202_648, localDay: '2026-11-25' });
  });

  test('is undone with the fact it belongs to', () => {
    const { db } = withRows();
    const broken = () =>
      db.write((tx) => {
        appendLedger(tx, {
          ...stampAt(9),
          id: idOf(9),
          kind: 'noted',
          schemaVersionNo: 1,
          body: {},
          accountId: null,
          stationId: null,
          editionHash: null,
        });
        throw new Error('no');
      });
    expect(broken).toThrow('no');
    expect(db.read(ledgerSeqNo)).toBe(ROWS_COUNT);
  });

  test('needs a founded shop', () => {
    const { db } = freshShop();
    const early = () =>
      db.write((tx) =>
        appendLedger(tx, {
          ...stampAt(1),
          id: idOf(1),
          kind: 'noted',
          schemaVersionNo: 1,
          body: {},
          accountId: null,
          stationId: null,
          editionHash: null,
        }),
      );
    expect(early).toThrow(/not been founded/);
    expect(db.read(ledgerSeqNo)).toBe(0);
    expect(db.read(lastLedgerRow)).toBeUndefined();
  });

  test('is read page by page from any row', () => {
    const { db } = withRows();
    const page = db.read((tx) => listLedger(tx, 2, 3));
    expect(page.map(({ row, body }) => [row.seqNo, body])).toEqual([
      [3, '{"no":3}'],
      [4, '{"no":4}'],
      [5, '{"no":5}'],
    ]);
    expect(db.read((tx) => listLedger(tx, ROWS_COUNT, 3))).toEqual([]);
  });
});

/** The header of a row with a change, hashed as if it had been written so. */
function forged({ db }: TestShop, seqNo: number, change: Partial<LedgerRow>): string {
  const [fact] = db.read((tx) => listLedger(tx, seqNo - 1, 1));
  if (!fact) throw new Error(`no row ${seqNo}`);
  const { rowSha256: _, ...header } = { ...fact.row, ...change };
  return headerSha256(header);
}

describe('checking', () => {
  test('an untouched chain is whole, and its head is the last row', () => {
    const shop = withRows();
    const report = shop.db.read(verifyLedger);
    expect(report).toEqual({ rowsCount: ROWS_COUNT, headSha256: shop.db.read(lastLedgerRow)?.rowSha256, problems: [] });
    expect(shopWithEdition().db.read(verifyLedger)).toEqual({ rowsCount: 0, headSha256: null, problems: [] });
  });

  test.each([
    ['a changed body', `UPDATE ledger_body SET body = '{"no":33}' WHERE seq_no = 3`, [/^Ledger row 3 \(noted\): its body was changed/]],
    ['a changed header', "UPDATE ledger SET kind = 'denied' WHERE seq_no = 3", [/^Ledger row 3 \(denied\): it was changed/]],
    ['a changed last row', 'UPDATE ledger SET at_ms = at_ms + 1 WHERE seq_no = 6', [/^Ledger row 6 \(noted\): it was changed/]],
    ['a body taken away', 'DELETE FROM ledger_body WHERE seq_no = 4', [/^Ledger row 4 \(noted\): its body is gone and was never purged/]],
    [
      'a row taken out',
      'DELETE FROM ledger WHERE seq_no = 3',
      [/^Ledger row 4 \(noted\): rows 3 to 3 are missing/, /^Ledger row 4 \(noted\): it does not follow/],
    ],
    [
      'a first row taken out',
      'DELETE FROM ledger WHERE seq_no = 1',
      [/^Ledger row 2 \(noted\): rows 1 to 1 are missing/, /row 2 .* does not follow/],
    ],
  ])('%s is named', (_, sql, says) => {
    const shop = withRows();
    tamper(shop, sql);
    const problems = problemsOf(shop);
    expect(problems).toHaveLength(says.length);
    says.forEach((pattern, index) => {
      expect(problems[index]).toMatch(pattern);
    });
  });

  test('a row forged with its own hash breaks the row after it', () => {
    const shop = withRows();
    const hash = forged(shop, 3, { kind: 'denied' });
    tamper(shop, `UPDATE ledger SET kind = 'denied', row_sha256 = '${hash}' WHERE seq_no = 3`);
    expect(problemsOf(shop)).toEqual(['Ledger row 4 (noted): it does not follow from the row before it.']);
  });

  test('a cut-off end shows in the head, which is why it is noted elsewhere', () => {
    const shop = withRows();
    const head = shop.db.read(verifyLedger).headSha256;
    tamper(shop, 'DELETE FROM ledger_body WHERE seq_no = 6; DELETE FROM ledger WHERE seq_no = 6');
    expect(shop.db.read(verifyLedger)).toMatchObject({ rowsCount: 5, problems: [] });
    expect(shop.db.read(verifyLedger).headSha256).not.toBe(head);
  });

  test('no single change of any column of any row goes unseen', () => {
    const columns = [
      'incarnation_id',
      'id',
      'kind',
      'schema_version_no',
      'body_sha256',
      'prev_sha256',
      'row_sha256',
      'at_ms',
      'local_day',
      'iso_week',
      'account_id',
      'station_id',
      'edition_hash',
    ];
    fc.assert(
      fc.property(fc.constantFrom(...columns), fc.integer({ min: 1, max: ROWS_COUNT }), (column, seqNo) => {
        const shop = withRows();
        const value = /_no$|_ms$|_week$/.test(column) ? `${column} + 1` : "'0f'";
        tamper(shop, `UPDATE ledger SET ${column} = ${value} WHERE seq_no = ${seqNo}`);
        return problemsOf(shop).some((problem) => problem.startsWith(`Ledger row ${seqNo} `));
      }),
      { seed: 20_261_125, numRuns: 60 },
    );
  });
});
