// One edition with its bytes.
import { findEdition, findEditionDocument } from '#db/editions.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import type { Flow } from './flow.ts';

export const exportEdition = (
  flow: Flow,
  hash: string,
): Result<{ readonly editionNo: number; readonly document: string }, { readonly kind: 'no-edition' }> =>
  flow.db.read((tx) => {
    const head = findEdition(tx, hash);
    const document = findEditionDocument(tx, hash);
    return head && document !== undefined ? accept({ editionNo: head.editionNo, document }) : refuse({ kind: 'no-edition' } as const);
  });
