// Calls of the bench that only look. The server's ETag keeps an unchanged answer small; the browser sends it by itself.
import type { BenchQueue } from '#lib/contracts/bench-queue.ts';
import type { BenchOutput, LotOutput } from '#lib/contracts/bench-view.ts';
import type { Reply } from './send.ts';
import { look } from './send.ts';

export const lookAtQueue = (): Promise<Reply<BenchQueue>> => look('/api/bench/queue');
export const lookAtOrder = (orderId: string): Promise<Reply<BenchOutput>> =>
  look(`/api/bench/order?orderId=${encodeURIComponent(orderId)}`);
export const lookAtLot = (orderId: string, lotCode: string): Promise<Reply<LotOutput>> =>
  look(`/api/bench/lot?orderId=${encodeURIComponent(orderId)}&lotCode=${encodeURIComponent(lotCode)}`);
