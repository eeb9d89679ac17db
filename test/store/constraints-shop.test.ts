// The impossible cannot be stored: each rule of the schema is proved by trying to break it. People, editions, the ledger.
import { describe } from 'vitest';
import type { Writing } from '#db/connection.ts';
import { findNewestEdition } from '#db/editions.ts';
import { insertAccount, insertSecretHash } from '#db/people.ts';
import { inserting } from '#db/query.ts';
import { draftRevision, edition } from '#db/schema-editions.ts';
import { ledger } from '#db/schema-shop.ts';
import { insertSession } from '#db/sessions.ts';
import { foundShop, readShop } from '#db/shop.ts';
import { isoWeek } from '#lib/units/time.ts';
import { refuses } from '#test/support/refuses.ts';
import { DAY, FORMULATOR, idOf, later, MIXER, numberedIds, SECOND_FORMULATOR, T0 } from '#test/support/shop-facts.ts';

const session = (tx: Writing, change: object): void =>
  insertSession(tx, {
    tokenSha256: 'a'.repeat(64),
    accountId: MIXER,
    stationId: null,
    createdAtMs: later(0),
    expiresAtMs: later(1),
    ...change,
  });

describe('shop and people', () => {
  refuses([
    ['a second shop', /UNIQUE.*shop\.row_no/, (tx) => foundShop(tx, readShop(tx), idOf(901))],
    [
      'a shop code of three letters',
      /shop_code_letters/,
      (tx) => tx.orm.$client.exec("INSERT INTO shop SELECT 1, 'ABC', name, zone, sealing_secret, is_demo, notice, founded_at_ms FROM shop"),
    ],
    [
      'two accounts with one code',
      /UNIQUE.*account\.code/,
      (tx) => insertAccount(tx, { id: idOf(99), code: 'mixer', name: 'x', role: 'mixer', createdAtMs: T0 }),
    ],
    [
      'a secret that is no argon2id hash',
      /account_secret_hash/,
      (tx) => insertSecretHash(tx, { accountId: MIXER, hash: 'hunter2', atMs: T0 }),
    ],
    ['a secret of nobody', /FOREIGN KEY/, (tx) => insertSecretHash(tx, { accountId: idOf(99), hash: '$argon2id$x', atMs: T0 })],
    ['a session of neither person nor place', /session_somebody/, (tx) => session(tx, { accountId: null })],
    ['a session that ends before it begins', /session_ends_later/, (tx) => session(tx, { expiresAtMs: later(0) })],
  ]);
});

const draft = (tx: Writing, change: object): void =>
  inserting(draftRevision)(tx, {
    revisionNo: 2,
    parentRevisionNo: 1,
    document: '{}',
    sha256: 'a'.repeat(64),
    byAccountId: FORMULATOR,
    changed: '',
    atMs: T0,
    ...change,
  });

const frozen = (tx: Writing, change: object): void => {
  const people = { authorAccountId: FORMULATOR, approverAccountId: SECOND_FORMULATOR, fromRevisionNo: 1 };
  inserting(edition)(tx, {
    ...people,
    editionNo: 2,
    hash: 'b'.repeat(64),
    document: '{}',
    variantsCount: 1n,
    publishedAtMs: T0,
    effectiveAtMs: T0,
    ...change,
  });
};

describe('drafts and editions', () => {
  refuses([
    ['two children of one revision', /UNIQUE.*(revision_no)/, (tx) => [draft(tx, {}), draft(tx, {})]],
    ['a revision that skips a number', /draft_revision_follows/, (tx) => draft(tx, { revisionNo: 3 })],
    ['a second first revision', /draft_revision_follows/, (tx) => draft(tx, { parentRevisionNo: null })],
    ['a draft that is no JSON', /draft_revision_json/, (tx) => draft(tx, { document: '{' })],
    ['an edition approved by its author', /edition_two_people/, (tx) => frozen(tx, { approverAccountId: FORMULATOR })],
    ['an edition that skips a number', /contiguous/, (tx) => frozen(tx, { editionNo: 3 })],
    ['an edition that took effect before it was published', /edition_not_backdated/, (tx) => frozen(tx, { publishedAtMs: later(1) })],
    ['an edition from a draft that is not there', /FOREIGN KEY/, (tx) => frozen(tx, { fromRevisionNo: 9 })],
    ['the same bytes twice', /UNIQUE/, (tx) => frozen(tx, { hash: findNewestEdition(tx)?.hash })],
  ]);
});

const newId = numberedIds();
const ledgerRow = (tx: Writing, change: object): void => {
  const refs = { incarnationId: idOf(900), accountId: null, stationId: null, editionHash: null };
  const hashes = { bodySha256: 'a'.repeat(64), prevSha256: '0'.repeat(64), rowSha256: 'd'.repeat(64) };
  inserting(ledger)(tx, {
    ...refs,
    ...hashes,
    seqNo: 1,
    id: newId(),
    kind: 'x',
    schemaVersionNo: 1,
    atMs: T0,
    localDay: DAY,
    isoWeek: isoWeek(DAY),
    ...change,
  });
};

describe('the ledger', () => {
  refuses([
    ['a number left out', /follows the last one/, (tx) => ledgerRow(tx, { seqNo: 2 })],
    ['a row that does not name the one before', /follows the last one/, (tx) => ledgerRow(tx, { prevSha256: 'e'.repeat(64) })],
    [
      'two rows after the same one',
      /follows the last one|UNIQUE/,
      (tx) => [ledgerRow(tx, {}), ledgerRow(tx, { seqNo: 2, rowSha256: 'f'.repeat(64) })],
    ],
  ]);
});
