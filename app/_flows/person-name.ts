// The name of whoever is signed in, for the head of a page.
import { findAccount } from '#db/people.ts';
import type { Flow } from './flow.ts';
import { staffOf } from './flow.ts';

export const personName = (flow: Flow): string => flow.db.read((tx) => findAccount(tx, staffOf(flow).accountId)?.name ?? '');
