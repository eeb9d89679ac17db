import { connection } from 'next/server';
import type { ReactNode } from 'react';
import { showLabel } from '#app/_flows/show-label.ts';
import { FitSheet } from '#app/_print/fit-sheet.tsx';
import { JarLabel } from '#app/_print/jar-label.tsx';
import { NoSheet } from '#app/_print/no-sheet.tsx';
import { printText } from '#app/_print/print-text.ts';
import { staffPage } from '#app/_server/page-actor.ts';
import './sheet.css';

export const metadata = { title: 'Label – Bench' };

export default async function LabelPage({ params }: { readonly params: Promise<{ readonly orderId: string }> }): Promise<ReactNode> {
  await connection();
  const { orderId } = await params;
  const { flow } = await staffPage(['mixer', 'checker'], `/bench/print/label/${orderId}`);
  const label = showLabel(flow, orderId);
  const { t } = printText();
  if (!label.ok) return <NoSheet why={t(label.refusal.kind)} />;
  return (
    <FitSheet size="label" words={{ print: t('print'), tooLong: t('label-too-long'), tooLongNote: t('label-too-long-note') }}>
      <JarLabel label={label.value} />
    </FitSheet>
  );
}
