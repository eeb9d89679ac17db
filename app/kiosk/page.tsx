import { connection } from 'next/server';
import type { ReactNode } from 'react';
import { showKiosk } from '#app/_flows/show-kiosk.ts';
import { openPage } from '#app/_server/page-actor.ts';
import { EmptyScene } from '#app/_ui/drawing/empty-scene.tsx';
import { KioskFrame } from '#app/_ui/frames/kiosk-frame.tsx';
import { kioskText } from './kiosk-text.ts';
import { KioskVisit } from './kiosk-visit.tsx';

export const metadata = { title: 'Mask maker' };

export default async function KioskPage(): Promise<ReactNode> {
  await connection();
  const { flow } = await openPage();
  const show = showKiosk(flow);
  const { t } = kioskText();
  if ('kind' in show) {
    return (
      <KioskFrame
        brand="Jarwright"
        place={t('tagline')}
        flow="follow"
        titleSize="outcome"
        shown={
          <>
            <h1 className="type-title">{t('closed-title')}</h1>
            <p>{t(`closed-${show.kind}`)}</p>
          </>
        }
        picture={<EmptyScene />}
      />
    );
  }
  return <KioskVisit show={show} />;
}
