// What the shop does by itself: orders that nobody took on lapse with their day, so that no lot stays promised overnight, and open ones
// are judged again when the hour of a waiting edition has come. Done when the file is opened and every hour after; a server that stood
// still over midnight catches up.
import type { Flow } from '#app/_flows/flow.ts';
import { lapseOrders } from '#app/_flows/lapse-orders.ts';
import { rejudgeOrders } from '#app/_flows/rejudge-open-orders.ts';
import { logFault } from './log.ts';

const EVERY_MS = 3_600_000;

/** @returns what ends it. A fault goes to the log; the next hour tries again. */
export function keepDaysEnding(asNobody: () => Flow, newId: () => string): () => void {
  const endDays = (): void => {
    try {
      const flow = asNobody();
      lapseOrders(flow);
      rejudgeOrders(flow);
    } catch (error) {
      logFault({ faultId: newId(), where: 'end of day', error });
    }
  };
  endDays();
  const timer = setInterval(endDays, EVERY_MS);
  timer.unref();
  return () => clearInterval(timer);
}
