// The server as a shop sees it: from the start to the first reply, and how many health checks and pages it then answers.
import { readFileSync } from 'node:fs';
import { startShop } from '#test/support/start-shop.ts';
import type { Bench, Figures } from './bench.ts';
import { timed } from './bench.ts';

const REQUESTS_COUNT = 200;

async function perSecond(url: string, timesCount: number): Promise<number> {
  const { tookMs } = await timed(async () => {
    for (let time = 0; time < timesCount; time += 1) await (await fetch(url)).text();
  });
  return Math.round((timesCount * 1000) / tookMs);
}

export const serverBench: Bench = {
  name: 'server',
  says: 'start a demonstration shop; health checks and first pages, one after another',
  run: async (timesCount) => {
    const { tookMs, gave: shop } = await timed(async () => {
      const started = await startShop();
      await (await fetch(`${started.url}/api/health`)).text();
      return started;
    });
    const requestsCount = REQUESTS_COUNT * timesCount;
    const healthPerSecondCount = await perSecond(`${shop.url}/api/health`, requestsCount);
    const pagesPerSecondCount = await perSecond(shop.url, requestsCount);
    const memory: Figures = process.platform === 'linux' ? { memoryKilobytesCount: residentKilobytes(shop.pid) } : {};
    await shop.stop();
    return { startMs: Math.round(tookMs), healthPerSecondCount, pagesPerSecondCount, ...memory };
  },
};

const residentKilobytes = (pid: number): number => Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1]);
