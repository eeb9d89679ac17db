// The picture of pages without a mask: an empty jar, and the seams that run on through the ground. Nothing sad, nothing missing.
import type { ReactNode } from 'react';
import styles from './empty-scene.module.css';
import { JarDrawing } from './jar-drawing.tsx';
import { jarShape } from './jar-shape.ts';

const JAR = { width: 268, height: 296 } as const;
const FAR = 2600;
const STEP = 40;

function run(index: number, y: number): string {
  const points = Array.from({ length: FAR / STEP + 8 }, (_, step) => {
    const x = step * STEP - 7 * STEP;
    return `${x} ${(y + 15 * Math.sin(x / 95 + index * 1.4) + 5 * Math.sin(x / 41 + index)).toFixed(1)}`;
  });
  return `M${points.join('L')}`;
}

export function EmptyScene(): ReactNode {
  const { body } = jarShape(JAR.width, JAR.height);
  const levels = [0.3, 0.48, 0.63, 0.86].map((share) => body.y + share * body.height);
  return (
    <svg width="100%" height={JAR.height} overflow="visible" className={styles.scene} aria-hidden="true" data-mirror="">
      {levels.map((y, index) => (
        <path key={y} d={run(index, y)} fill="none" stroke="#6F8087" strokeWidth={2.5} strokeDasharray="3 7" />
      ))}
      <JarDrawing width={JAR.width} height={JAR.height} />
    </svg>
  );
}
