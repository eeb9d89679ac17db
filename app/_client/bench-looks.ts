// Calls of the bench that only look; the two that are repeated every few seconds cost nothing while nothing happens.
import type { BenchQueue } from '#lib/contracts/bench-queue.ts';
import type { BenchOutput, LotOutput } from '#lib/contracts/bench-view.ts';
import type { Reply } from './send.ts';
import { look, lookAgain } from './send.ts';

export const queueWatch = (): (() => Promise<Reply<BenchQueue>>) => lookAgain('/api/bench/queue');
export const orderWatch = (orderId: string): (() => Promise<Reply<BenchOutput>>) =>
  lookAgain(`/api/bench/order?orderId=${encodeURIComponent(orderId)}`);
export const lookAtLot = (orderId: string, lotCode: string): Promise<Reply<LotOutput>> =>
  look(`/api/bench/lot?orderId=${encodeURIComponent(orderId)}&lotCode=${encodeURIComponent(lotCode)}`);
