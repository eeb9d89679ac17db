// Every edition with who wrote, who approved and what the signature says.
import type { EditionHead, EditionSignature } from '#db/editions.ts';
import { listEditionSignatures, listEditions } from '#db/editions.ts';
import type { Flow } from './flow.ts';

export interface SignedEdition {
  readonly head: EditionHead;
  readonly signatures: readonly EditionSignature[];
  /** The younger edition that was in force before this one's hour came, so that it never was; null for all others. */
  readonly replacedByNo: number | null;
}

/** Newest first. */
export const signedEditions = (flow: Flow): readonly SignedEdition[] =>
  flow.db.read((tx) => {
    const heads = listEditions(tx);
    return heads.map((head) => ({ head, signatures: listEditionSignatures(tx, head.hash), replacedByNo: replacing(heads, head) }));
  });

const replacing = (heads: readonly EditionHead[], { editionNo, effectiveAtMs }: EditionHead): number | null =>
  heads.findLast((other) => other.editionNo > editionNo && other.effectiveAtMs <= effectiveAtMs)?.editionNo ?? null;
