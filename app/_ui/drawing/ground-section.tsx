// The opening picture: five stout jars as windows on one section through the ground, its seams dotted where nobody dug.
import type { ReactNode } from 'react';
import { useId } from 'react';
import { earth } from './earth.data.ts';
import styles from './ground-section.module.css';
import type { Hatch } from './hatch.tsx';
import { HatchPattern } from './hatch.tsx';
import { Lid } from './jar-drawing.tsx';
import { jarShape } from './jar-shape.ts';
import { INK, markOn, WHITE } from './lightness.ts';

const WIDTH = 1080;
const HEIGHT = 960;

interface Bed {
  readonly hatch: Hatch;
  readonly fill: string;
  /** Level at the middle, its fall over the width, and where its fold begins. */
  readonly level: number;
  readonly fall: number;
  readonly phase: number;
}

const beds: readonly Bed[] = [
  { hatch: 'oil', fill: earth.oil, level: 168, fall: -46, phase: 0.2 },
  { hatch: 'base-clay', fill: earth.kaolin, level: 226, fall: -16, phase: 0.9 },
  { hatch: 'tint-clay', fill: earth.illite, level: 284, fall: -38, phase: 1.5 },
  { hatch: 'mineral-colour', fill: earth.green, level: 342, fall: 30, phase: 2.1 },
  { hatch: 'humectant', fill: earth.ochre, level: 404, fall: 54, phase: 2.6 },
  { hatch: 'tint-clay', fill: earth.rust, level: 532, fall: 40, phase: 3.5 },
  { hatch: 'botanical', fill: earth.rose, level: 654, fall: -28, phase: 4.2 },
  { hatch: 'oil', fill: '#7C5A68', level: 752, fall: 36, phase: 5.1 },
  { hatch: 'tint-clay', fill: earth.slate, level: 830, fall: -44, phase: 5.6 },
];

// Staggered as on a shelf seen from the front; the last one to settle is the big one in the middle.
const jars = [
  { x: 58, y: 74, width: 270, height: 324 },
  { x: 752, y: 56, width: 270, height: 324 },
  { x: 120, y: 486, width: 342, height: 420 },
  { x: 606, y: 462, width: 342, height: 444 },
  { x: 374, y: 18, width: 332, height: 402 },
] as const;

const STEP = 30;

function level(bed: Bed, x: number): number {
  const along = x / WIDTH;
  const fall = bed.fall * Math.sin((along - 0.5) * 2.4);
  return bed.level + fall + 22 * Math.sin(along * 7.2 + bed.phase * 1.7) + 10 * Math.sin(along * 15 + bed.phase);
}

// Runs well past both edges: on a wide page the ground goes on.
const MARGIN = 1500;

function seam(bed: Bed): string {
  const points = Array.from({ length: (WIDTH + 2 * MARGIN) / STEP + 1 }, (_, index) => {
    const x = index * STEP - MARGIN;
    return `${x} ${level(bed, x).toFixed(1)}`;
  });
  return `M${points.join('L')}`;
}

export function GroundSection(): ReactNode {
  const id = `ground-${useId()}`;
  return (
    <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} className={styles.section} aria-hidden="true" preserveAspectRatio="xMidYMid meet">
      <defs>
        {beds.map((bed, index) => (
          <HatchPattern
            key={bed.level}
            id={`${id}-${index}`}
            hatch={bed.hatch}
            ink={markOn(bed.fill)}
            strength={markOn(bed.fill) === WHITE ? 0.82 : 0.78}
            scale={1.2}
          />
        ))}
        {jars.map((jar, index) => (
          <clipPath key={jar.x} id={`${id}-jar-${index}`}>
            <path d={jarShape(jar.width, jar.height, jar.x, jar.y).bodyPath} />
          </clipPath>
        ))}
      </defs>
      {beds.map((bed) => (
        <path key={bed.level} d={seam(bed)} fill="none" stroke="#6F8087" strokeWidth={2} strokeDasharray="3 7" />
      ))}
      {jars.map((jar, index) => (
        <JarWindow key={jar.x} id={id} index={index} shape={jarShape(jar.width, jar.height, jar.x, jar.y)} />
      ))}
    </svg>
  );
}

function JarWindow(props: { readonly id: string; readonly index: number; readonly shape: ReturnType<typeof jarShape> }): ReactNode {
  const { id, index, shape } = props;
  return (
    <g className={styles[`settle${index}`]}>
      <g clipPath={`url(#${id}-jar-${index})`}>
        <rect width={WIDTH} height={HEIGHT} fill={earth.cream} />
        {beds.map((bed, bedIndex) => {
          const body = `${seam(bed)}V${HEIGHT}H${-MARGIN}Z`;
          return (
            <g key={bed.level}>
              <path d={body} fill={bed.fill} />
              <path d={body} fill={`url(#${id}-${bedIndex})`} />
              <path d={seam(bed)} fill="none" stroke={INK} strokeWidth={3} />
            </g>
          );
        })}
      </g>
      <path d={shape.bodyPath} fill="none" stroke={INK} strokeWidth={4} />
      <Lid shape={shape} />
    </g>
  );
}
