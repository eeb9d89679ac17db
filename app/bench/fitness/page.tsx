import { connection } from 'next/server';
import type { ReactNode } from 'react';
import { personName } from '#app/_flows/person-name.ts';
import { shopOf } from '#app/_flows/read-shop.ts';
import { showFitness } from '#app/_flows/show-fitness.ts';
import { staffPage } from '#app/_server/page-actor.ts';
import { FitnessDesk } from '../fitness-desk.tsx';

export const metadata = { title: 'Checks of the day – Bench' };

export default async function FitnessPage(): Promise<ReactNode> {
  await connection();
  const { flow } = await staffPage(['mixer', 'checker'], '/bench/fitness');
  const { scales, meter } = showFitness(flow);
  return (
    <FitnessDesk
      scales={[...scales]}
      meter={{ ...meter, buffersPhX100: [...meter.buffersPhX100] }}
      place={shopOf(flow).name}
      who={personName(flow)}
    />
  );
}
