// Stopping something, and lifting a stop.
import type { LiftStopInput, LiftStopOutput, StopInput, StopOutput } from '#lib/contracts/stops.ts';
import type { Reply } from './send.ts';
import { send } from './send.ts';

export const placeStop = (input: StopInput): Promise<Reply<StopOutput>> => send('/api/office/stop', input);
export const liftStop = (input: LiftStopInput): Promise<Reply<LiftStopOutput>> => send('/api/office/lift-stop', input);
