// The layers of a jar for a thermal printer: black lines on white, each drawn by itself, since a pattern reaches the printer as a grey picture.
import type { ReactNode } from 'react';
import { layerTops, layerUnits } from '#app/_ui/drawing/core-layout.ts';
import type { Hatch } from '#app/_ui/drawing/hatch.tsx';
import { hatchTile } from '#app/_ui/drawing/hatch.tsx';

const WIDTH = 66;
const HEIGHT = 36;
/** A tile drawn for a screen, at the size of a label: lines stay a dot of the printer wide, gaps stay open. */
const TILE_SCALE = 0.5;

export function LabelStrata({ layers }: { readonly layers: readonly { readonly look: Hatch; readonly sharePpm: number }[] }): ReactNode {
  const units = layerUnits(
    layers.map(({ look, sharePpm }) => ({ hatch: look, sharePpm })),
    HEIGHT,
  );
  const tops = layerTops(units);
  return (
    <svg width={WIDTH} height={HEIGHT} viewBox={`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden="true" fill="none" stroke="#000000">
      {layers.map(({ look }, index) => {
        const top = (tops[index] ?? 0) * HEIGHT;
        const height = (tops[index + 1] ?? 1) * HEIGHT - top;
        // biome-ignore lint/suspicious/noArrayIndexKey: a layer is its place
        return <Layer key={index} hatch={look} top={top} height={height} />;
      })}
      <rect x={0.5} y={0.5} width={WIDTH - 1} height={HEIGHT - 1} />
    </svg>
  );
}

function Layer({ hatch, top, height }: { readonly hatch: Hatch; readonly top: number; readonly height: number }): ReactNode {
  const { width: tileWidth, height: tileHeight, draw } = hatchTile(hatch);
  const places = stepsOf(height, tileHeight).flatMap((y) => stepsOf(WIDTH, tileWidth).map((x) => ({ x, y })));
  return (
    <>
      <svg y={top} width={WIDTH} height={height} aria-hidden="true">
        {places.map(({ x, y }) => (
          <g key={`${x}-${y}`} transform={`translate(${x} ${y}) scale(${TILE_SCALE})`} strokeWidth={1.6}>
            {draw}
          </g>
        ))}
      </svg>
      {top > 0 && <path d={`M0 ${top}H${WIDTH}`} />}
    </>
  );
}

const stepsOf = (length: number, tile: number): readonly number[] =>
  Array.from({ length: Math.ceil(length / (tile * TILE_SCALE)) }, (_, index) => index * tile * TILE_SCALE);
