// Calls of the back office.
import type { NewAccountInput, NewAccountOutput } from '#lib/contracts/account.ts';
import type { ChangeDraftInput, ChangeDraftOutput } from '#lib/contracts/draft.ts';
import type { ImportDraftInput, ImportDraftOutput } from '#lib/contracts/import-draft.ts';
import type { PublishInput, PublishOutput } from '#lib/contracts/publish.ts';
import type { Reply } from './send.ts';
import { send } from './send.ts';

export const changeDraft = (input: ChangeDraftInput): Promise<Reply<ChangeDraftOutput>> => send('/api/office/draft', input);
export const importDraft = (input: ImportDraftInput): Promise<Reply<ImportDraftOutput>> => send('/api/office/import', input);
export const publish = (input: PublishInput): Promise<Reply<PublishOutput>> => send('/api/office/publish', input);
export const addPerson = (input: NewAccountInput): Promise<Reply<NewAccountOutput>> => send('/api/office/account', input);
