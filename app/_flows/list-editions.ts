// Every edition with who wrote, who approved and what the signature says.
import type { EditionHead, EditionSignature } from '#db/editions.ts';
import { listEditionSignatures, listEditions } from '#db/editions.ts';
import type { Flow } from './flow.ts';

export interface SignedEdition {
  readonly head: EditionHead;
  readonly signatures: readonly EditionSignature[];
}

/** Newest first. */
export const signedEditions = (flow: Flow): readonly SignedEdition[] =>
  flow.db.read((tx) => listEditions(tx).map((head) => ({ head, signatures: listEditionSignatures(tx, head.hash) })));
