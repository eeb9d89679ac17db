import { notFound } from 'next/navigation';
import { connection } from 'next/server';
import type { ReactNode } from 'react';
import { personName } from '#app/_flows/person-name.ts';
import { showCard } from '#app/_flows/show-card.ts';
import { staffPage } from '#app/_server/page-actor.ts';
import { benchViewSchema } from '#lib/contracts/bench-view.ts';
import { JarDesk } from '../../jar-desk.tsx';

export const metadata = { title: 'Jar – Bench' };

export default async function OrderPage({ params }: { readonly params: Promise<{ readonly orderId: string }> }): Promise<ReactNode> {
  await connection();
  const { orderId } = await params;
  const { flow } = await staffPage(['mixer', 'checker'], `/bench/order/${orderId}`);
  const view = showCard(flow, orderId);
  if (!view) notFound();
  return <JarDesk key={orderId} initial={benchViewSchema.parse(view)} who={personName(flow)} />;
}
