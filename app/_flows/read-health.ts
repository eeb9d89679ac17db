// What a monitor or a polling screen asks every few seconds: which edition decides, and how far the ledger has come.
import { findEditionInForce } from '#db/editions.ts';
import { ledgerSeqNo } from '#db/ledger.ts';
import type { Flow } from './flow.ts';

export interface ShopHealth {
  readonly editionNo: number | null;
  readonly ledgerSeq: number;
}

export const readHealth = ({ db, now }: Pick<Flow, 'db' | 'now'>): ShopHealth =>
  db.read((tx) => ({ editionNo: findEditionInForce(tx, now)?.editionNo ?? null, ledgerSeq: ledgerSeqNo(tx) }));
