import { connection } from 'next/server';
import type { ReactNode } from 'react';
import type { KioskClosed } from '#app/_flows/show-kiosk.ts';
import { showKiosk } from '#app/_flows/show-kiosk.ts';
import { openPage } from '#app/_server/page-actor.ts';
import { EmptyScene } from '#app/_ui/drawing/empty-scene.tsx';
import { KioskFrame } from '#app/_ui/frames/kiosk-frame.tsx';
import { kioskText } from './kiosk-text.ts';
import { KioskVisit } from './kiosk-visit.tsx';

export const metadata = { title: 'Mask maker' };

interface KioskRequest {
  readonly searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>>;
}

/** The whole kiosk is this one document. `?counter=CS` says at which counter it stands. */
export default async function Kiosk({ searchParams }: KioskRequest): Promise<ReactNode> {
  await connection();
  const { counter } = await searchParams;
  const { flow } = await openPage();
  const open = showKiosk(flow, { counterCode: [counter ?? null].flat()[0] ?? null });
  if (open.ok) return <KioskVisit firstShow={open.value.shown} counterCode={open.value.counterCode} />;
  const { t } = kioskText('en');
  return (
    <KioskFrame
      brand={t('product')}
      place={t('tagline')}
      flow="follow"
      titleSize="outcome"
      shown={
        <>
          <EmptyScene />
          <Closed why={open.refusal} />
        </>
      }
    />
  );
}

/** A wrong address is said to be one: an order must never go to the counter of somebody else. */
function Closed({ why }: { readonly why: KioskClosed }): ReactNode {
  const { t } = kioskText('en');
  const isLost = why.kind === 'unknown-counter';
  return (
    <>
      <h1 className="type-title">{isLost ? t('closed-counter-title', { code: why.counterCode.slice(0, 8) }) : t('closed-title')}</h1>
      <p>{t(`closed-${why.kind}`)}</p>
    </>
  );
}
