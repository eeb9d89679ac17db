// Why the other shades and actives are not among the masks shown.
import type { WhyNotInput, WhyNotOutput } from '#lib/contracts/kiosk-choices.ts';
import type { Reply } from './send.ts';
import { send } from './send.ts';

export const askWhyNot = (input: WhyNotInput): Promise<Reply<WhyNotOutput>> => send('/api/kiosk/why-not', input);
