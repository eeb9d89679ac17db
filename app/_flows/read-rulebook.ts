// What the office looks at: the newest draft beside the edition in force, and what lies between them.
import { listAccounts } from '#db/people.ts';
import { readShop } from '#db/shop.ts';
import type { DiffLine } from '#lib/edition/diff.ts';
import { diffRulebooks } from '#lib/edition/diff.ts';
import { servedDraft } from '#lib/edition/publish-gate.ts';
import type { LocalDay } from '#lib/units/time.ts';
import { localDayIn } from '#lib/units/time.ts';
import type { OpenDraft } from './change-draft.ts';
import { latestDraft } from './change-draft.ts';
import type { OpenEdition } from './edition-in-force.ts';
import { editionInForce, newestEdition } from './edition-in-force.ts';
import type { Flow } from './flow.ts';

export interface RulebookView {
  readonly shop: { readonly name: string; readonly notice: string; readonly zone: string; readonly isDemo: boolean };
  readonly day: LocalDay;
  readonly draft: OpenDraft | null;
  readonly inForce: OpenEdition | null;
  /** The edition that the draft follows: in force, or waiting for its hour. */
  readonly newest: OpenEdition | null;
  /** From the newest edition to what the draft would publish, worst first. */
  readonly diff: readonly DiffLine[];
  /** Names of accounts by id, for "who". */
  readonly people: ReadonlyMap<string, string>;
}

export function readRulebook(flow: Flow): RulebookView {
  return flow.db.read((tx) => {
    const { name, notice, zone, isDemo } = readShop(tx);
    const draft = latestDraft(tx, flow);
    const newest = newestEdition(tx, flow);
    return {
      shop: { name, notice, zone, isDemo },
      day: localDayIn(zone, flow.now),
      draft,
      inForce: editionInForce(tx, flow),
      newest,
      diff: draft && newest ? diffRulebooks(newest.book.rulebook, servedDraft(draft.book.rulebook)) : [],
      people: new Map(listAccounts(tx).map((account) => [account.id, account.name])),
    };
  });
}
