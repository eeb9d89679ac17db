import { connection } from 'next/server';
import type { ReactNode } from 'react';
import { personName } from '#app/_flows/person-name.ts';
import { showQueue } from '#app/_flows/show-queue.ts';
import { staffPage } from '#app/_server/page-actor.ts';
import { queueOutputSchema } from '#lib/contracts/bench-queue.ts';
import { QueueDesk } from './queue-desk.tsx';

export const metadata = { title: 'Queue – Bench' };

export default async function BenchPage(): Promise<ReactNode> {
  await connection();
  const { flow } = await staffPage(['mixer', 'checker'], '/bench');
  return <QueueDesk initial={queueOutputSchema.parse(showQueue(flow))} who={personName(flow)} />;
}
