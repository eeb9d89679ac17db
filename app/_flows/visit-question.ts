// What every call of a visit begins with: the edition it was asked under must still be in force, and the answers must fit it.
import type { Reading } from '#db/connection.ts';
import type { AnswerFault, Answer } from '#lib/answers/read-answers.ts';
import { readAnswers } from '#lib/answers/read-answers.ts';
import type { Person } from '#lib/answers/person.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import type { OpenEdition } from './edition-in-force.ts';
import { editionInForce } from './edition-in-force.ts';
import type { Flow } from './flow.ts';

export interface VisitQuestion {
  readonly edition: OpenEdition;
  readonly person: Person;
}

export type VisitRefusal = { readonly kind: 'edition-moved' } | { readonly kind: 'bad-answers'; readonly faults: readonly AnswerFault[] };

/** The answers become a person for the length of one call; nothing of them is kept. */
export function openVisit(tx: Reading, flow: Flow, asked: { readonly editionHash: string; readonly answers: readonly Answer[] }): Result<VisitQuestion, VisitRefusal> {
  const edition = editionInForce(tx, flow);
  if (edition?.head.hash !== asked.editionHash) return refuse({ kind: 'edition-moved' });
  const person = readAnswers(edition.book.rulebook, asked.answers);
  return person.ok ? accept({ edition, person: person.value }) : refuse({ kind: 'bad-answers', faults: person.refusal });
}
