// The five weighing states by shape alone; colour adds nothing that a grey screen would lose.
import type { ReactNode } from 'react';

export const WEIGHING_STATES = ['light', 'moving', 'stable', 'heavy', 'no-reading'] as const;
export type WeighingState = (typeof WEIGHING_STATES)[number];

const shapes = {
  light: <path d="M12 3.5L22 20.5H2Z" fill="none" strokeWidth={2.6} strokeLinejoin="miter" />,
  moving: <circle cx={12} cy={12} r={9} fill="none" strokeWidth={2.6} />,
  stable: (
    <>
      <circle cx={12} cy={12} r={10} fill="currentColor" stroke="none" />
      <path d="M7 12.4l3.5 3.5L17.2 8.8" fill="none" stroke="var(--mark-ground, #ffffff)" strokeWidth={2.6} />
    </>
  ),
  heavy: <rect x={3} y={3} width={18} height={18} fill="currentColor" stroke="none" />,
  'no-reading': <circle cx={12} cy={12} r={9} fill="none" strokeWidth={2.6} strokeDasharray="4.7 4.7" />,
} satisfies Record<WeighingState, ReactNode>;

export function WeighingMark({ state, size = '1em' }: { readonly state: WeighingState; readonly size?: number | string }): ReactNode {
  return (
    <svg width={size} height={size} viewBox="0 0 24 24" stroke="currentColor" aria-hidden="true">
      {shapes[state]}
    </svg>
  );
}
