import { connection } from 'next/server';
import type { ReactNode } from 'react';
import { showPrintCard } from '#app/_flows/show-print-card.ts';
import { FitSheet } from '#app/_print/fit-sheet.tsx';
import { MixingCard } from '#app/_print/mixing-card.tsx';
import { NoSheet } from '#app/_print/no-sheet.tsx';
import { printText } from '#app/_print/print-text.ts';
import { staffPage } from '#app/_server/page-actor.ts';
import './sheet.css';

export const metadata = { title: 'Mixing card – Bench' };

export default async function CardPage({ params }: { readonly params: Promise<{ readonly orderId: string }> }): Promise<ReactNode> {
  await connection();
  const { orderId } = await params;
  const { flow } = await staffPage(['mixer', 'checker'], `/bench/print/card/${orderId}`);
  const card = showPrintCard(flow, orderId);
  const { t } = printText();
  if (!card.ok) return <NoSheet why={t(card.refusal.kind)} />;
  return (
    <FitSheet size="card" words={{ print: t('print'), tooLong: t('card-too-long'), tooLongNote: t('card-too-long-note') }}>
      <MixingCard card={card.value} />
    </FitSheet>
  );
}
