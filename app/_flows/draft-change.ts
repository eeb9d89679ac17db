// From what a formulator asked for to a change that can be signed: the shop adds who judged and on which day, and names the judgement.

import type { Reading } from '#db/connection.ts';
import { findAccount } from '#db/people.ts';
import { assertNever } from '#lib/base/invariant.ts';
import type { DraftChange } from '#lib/edition/change.ts';
import type { ClassJudgement, Grounds, PairJudgement } from '#lib/rulebook/judgement.ts';
import type { Flow } from './flow.ts';
import { staffOf, stampOf } from './flow.ts';

type Unsigned<T extends Grounds & { readonly id: string }> = Omit<T, 'id' | 'by' | 'on'>;

export type AskedChange =
  | Extract<DraftChange, { kind: 'set-level' | 'set-caution-text' | 'set-caution' }>
  | ({ readonly kind: 'judge-pair' } & Unsigned<PairJudgement>)
  | ({ readonly kind: 'judge-classes' } & Unsigned<ClassJudgement>);

export function signedChange(tx: Reading, flow: Flow, asked: AskedChange): DraftChange {
  const grounds = { by: findAccount(tx, staffOf(flow).accountId)?.name ?? '', on: stampOf(tx, flow.now).localDay };
  switch (asked.kind) {
    case 'judge-pair': {
      const { kind, ...judgement } = asked;
      return { kind, judgement: { ...judgement, ...grounds, id: `${asked.firstMaterialId}-with-${asked.secondMaterialId}` } };
    }
    case 'judge-classes': {
      const { kind, ...judgement } = asked;
      return { kind, judgement: { ...judgement, ...grounds, id: `${asked.firstClass}-with-${asked.secondClass}` } };
    }
    case 'set-level':
    case 'set-caution-text':
    case 'set-caution':
      return asked;
    default:
      return assertNever(asked);
  }
}
