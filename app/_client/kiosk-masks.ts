// All answers of a visit → the masks that fit.
import type { MasksInput, MasksOutput } from '#lib/contracts/kiosk-masks.ts';
import type { Reply } from './send.ts';
import { send } from './send.ts';

export const findMasks = (input: MasksInput): Promise<Reply<MasksOutput>> => send('/api/kiosk/masks', input);
