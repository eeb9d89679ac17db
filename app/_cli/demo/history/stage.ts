// Who acts in the demonstration's past, and when: every act has its own instant, and the steps are taken by those whose job they are.
import type { Flow, FlowActor } from '#app/_flows/flow.ts';
import type { Services } from '#app/_server/services.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import { invariant } from '#lib/base/invariant.ts';
import type { Result } from '#lib/base/result.ts';
import type { InstantMs, LocalDay } from '#lib/units/time.ts';
import { instantMs } from '#lib/units/time.ts';
import type { Dice } from './dice.ts';

/** The zone that the demonstration lives in. */
export const DEMO_ZONE = 'Europe/London';

export type Cast = 'formulator' | 'formulator2' | 'mixer' | 'checker' | 'manager';

/** Time at the bench: it only goes forward. */
export interface Clock {
  readonly now: () => InstantMs;
  readonly pass: (minutes: number) => void;
}

export interface Stage {
  readonly services: Services;
  readonly dice: Dice;
  readonly clock: Clock;
  /** The day that is being told. */
  readonly day: LocalDay;
  readonly accountId: (who: Cast) => string;
  readonly benchId: string;
  /** Who stands at the bench. */
  readonly hands: 'mixer' | 'checker';
  /** The last number given to a delivery of each code. */
  readonly lotNos: Map<string, number>;
}

const ROLE = { formulator: 'formulator', formulator2: 'formulator', mixer: 'mixer', checker: 'checker', manager: 'manager' } as const;

export function as(stage: Stage, who: Cast | 'nobody'): Flow {
  const { services, clock, accountId, benchId } = stage;
  const atBench = who === 'mixer' || who === 'checker';
  const actor: FlowActor =
    who === 'nobody'
      ? { kind: 'nobody' }
      : { kind: 'staff', accountId: accountId(who), role: ROLE[who], stationId: atBench ? benchId : null };
  return toFlow({ services, now: clock.now(), newId: services.newId, actor });
}

const MS_PER_MINUTE = 60_000;

export function clockOf(day: LocalDay, fromMinutes: number): Clock {
  const midnight = Date.parse(`${day}T00:00:00Z`);
  let minutes = fromMinutes;
  return {
    now: () => instantMs(midnight + Math.round(minutes * MS_PER_MINUTE)),
    pass: (more) => {
      minutes += more;
    },
  };
}

/** Earlier today, as far as today goes back, and never later than now. */
export function clockUpTo(now: InstantMs, isToday: (at: InstantMs) => boolean): Clock {
  const hours = [3, 2, 1].find((back) => isToday(instantMs(now - back * 60 * MS_PER_MINUTE))) ?? 0;
  let at = now - hours * 60 * MS_PER_MINUTE;
  return {
    now: () => instantMs(Math.min(now, Math.round(at))),
    pass: (minutes) => {
      at += minutes * MS_PER_MINUTE;
    },
  };
}

/** The value of a step that must go well. Throws a Fault with the refusal where it does not. */
export function went<T>(step: Result<T, unknown>, what: string): T {
  invariant(step.ok, `the demonstration broke where ${what}: ${JSON.stringify(step.ok ? null : step.refusal)}`);
  return step.value;
}
