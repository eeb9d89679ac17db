// The maker's mark: a small core. Ink-only for labels and grey copies.
import type { ReactNode } from 'react';
import { earth } from './earth.data.ts';
import { INK } from './lightness.ts';

export interface BrandMarkProps {
  /** Height in em of the text beside it. */
  readonly heightEm?: number;
  readonly ink?: 'colour' | 'ink-only' | 'on-ink';
}

const beds = [
  { top: 'M2 12.5q5.5-3.2 11 0t11 0V38H2Z', fill: earth.ochre },
  { top: 'M2 20.5q5.5 3.2 11 0t11 0V38H2Z', fill: earth.rust },
  { top: 'M2 28.5q5.5-3 11 0t11 0V38H2Z', fill: earth.green },
] as const;

export function BrandMark({ heightEm = 1.4, ink = 'colour' }: BrandMarkProps): ReactNode {
  const line = ink === 'on-ink' ? '#FFFFFF' : ink === 'ink-only' ? '#000000' : INK;
  const plain = ink === 'ink-only';
  return (
    <svg width={`${heightEm * 0.65}em`} height={`${heightEm}em`} viewBox="0 0 26 40" aria-hidden="true">
      <rect x={1.5} y={1.5} width={23} height={37} rx={3} fill="#FFFFFF" />
      {beds.map((bed) => (
        <path key={bed.top} d={bed.top} fill={plain ? '#FFFFFF' : bed.fill} stroke={plain ? line : INK} strokeWidth={2} />
      ))}
      <rect x={1.5} y={1.5} width={23} height={37} rx={3} fill="none" stroke={line} strokeWidth={3} />
    </svg>
  );
}
