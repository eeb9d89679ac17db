// A stout jar in one outline: ink lid, straight walls, rounded feet, the recipe's layers inside. Empty jars show faint seams.
import type { ReactNode } from 'react';
import { useId } from 'react';
import type { CoreLayer } from './core-column.tsx';
import { isCut, layerTops, layerUnits, seamPath } from './core-layout.ts';
import { jarShape } from './jar-shape.ts';
import { INK } from './lightness.ts';
import type { DrawingLabel } from './picture.tsx';
import { Picture } from './picture.tsx';
import { CutMark, Strata, StrataDefs } from './strata.tsx';

export interface JarDrawingProps {
  /** Left out, the jar is empty. */
  readonly layers?: readonly CoreLayer[];
  readonly width: number;
  readonly height: number;
  readonly label?: DrawingLabel;
}

export function JarDrawing({ layers, width, height, label }: JarDrawingProps): ReactNode {
  const id = `jar-${useId()}`;
  const shape = jarShape(width, height);
  const { body } = shape;
  return (
    <Picture id={id} label={label} width={width} height={height} viewBox={`0 0 ${width} ${height}`}>
      <defs>
        <clipPath id={`${id}-body`}>
          <path d={shape.bodyPath} />
        </clipPath>
        {layers && <StrataDefs id={id} strata={layers} scale={Math.max(0.6, Math.min(width / 230, 1.5))} />}
      </defs>
      <g clipPath={`url(#${id}-body)`}>
        <rect width={width} height={height} fill="#FFFFFF" />
        <svg aria-hidden="true" x={body.x} y={body.y} width={body.width} height={body.height}>
          {layers ? (
            <Filling id={id} layers={layers} width={body.width} height={body.height} />
          ) : (
            <Faint width={body.width} height={body.height} />
          )}
        </svg>
      </g>
      <path d={shape.bodyPath} fill="none" stroke={INK} strokeWidth={3.5} />
      <Lid shape={shape} />
    </Picture>
  );
}

function Filling(props: {
  readonly id: string;
  readonly layers: readonly CoreLayer[];
  readonly width: number;
  readonly height: number;
}): ReactNode {
  const tops = layerTops(layerUnits(props.layers, props.height));
  const wobble = Math.min(11, props.width / 26);
  return (
    <>
      <Strata id={props.id} strata={props.layers} tops={tops} width={props.width} seam={3} wobble={wobble} />
      {props.layers.length > 1 && props.layers.findIndex(isCut) === 0 && <CutMark width={props.width} seam={3} at={0.09} />}
    </>
  );
}

// Levels of the faint seams of an empty jar, as shares of its body.
const faintLevels = [0.3, 0.48, 0.63, 0.86] as const;

function Faint(props: { readonly width: number; readonly height: number }): ReactNode {
  return faintLevels.map((level, index) => (
    <path key={level} d={seamPath(index, props.width, level * props.height, 7)} fill="none" stroke="#6F8087" strokeWidth={2} />
  ));
}

/** Lid as one block of ink with a dashed line for its thread. */
export function Lid({ shape }: { readonly shape: ReturnType<typeof jarShape> }): ReactNode {
  const { lid } = shape;
  return (
    <>
      <rect x={lid.x} y={lid.y} width={lid.width} height={lid.height} rx={4} fill={INK} />
      <path
        d={`M${lid.x + lid.width * 0.07} ${lid.y + lid.height * 0.5}H${lid.x + lid.width * 0.93}`}
        stroke="#F4F6F3"
        strokeWidth={2.5}
        strokeDasharray="9 8"
        fill="none"
      />
    </>
  );
}
