// One hatch a material class, the same everywhere, so that a layer can be read on a grey copy.
import type { ReactNode } from 'react';
import { INK } from './lightness.ts';

export const HATCHES = [
  'base-clay',
  'tint-clay',
  'mineral-colour',
  'oil',
  'humectant',
  'acid',
  'botanical',
  'preservative',
  'cream',
] as const;
export type Hatch = (typeof HATCHES)[number];

export interface Tile {
  readonly width: number;
  readonly height: number;
  readonly draw: ReactNode;
}

// Drawn for a column 100 wide; `scale` shrinks or grows the tile with the drawing.
const tiles = {
  'base-clay': { width: 30, height: 24, draw: <path d="M3 6h11M18 18h11" /> },
  'tint-clay': { width: 24, height: 13, draw: <path d="M-6 7q6-6 12 0t12 0t12 0" /> },
  'mineral-colour': { width: 25, height: 25, draw: <path d="M7 2.5v9M2.5 7h9M19.5 15v9M15 19.5h9" /> },
  oil: { width: 12, height: 12, draw: <path d="M-3 3L3-3M-1 13L13-1M9 15L15 9" /> },
  humectant: {
    width: 22,
    height: 22,
    draw: <path d="M5.5 5.5h.01M16.5 16.5h.01" strokeLinecap="round" strokeWidth={4.4} />,
  },
  acid: { width: 28, height: 25, draw: <path d="M7.5 2.5l4.5 8h-9zM21.5 15l4.5 8h-9z" strokeLinejoin="miter" /> },
  botanical: { width: 28, height: 25, draw: <path d="M4 10.5l4-8M9.5 10.5l4-8M18 23l4-8M23.5 23l4-8" /> },
  preservative: { width: 15, height: 15, draw: <path d="M0 7.5h15M7.5 0v15" strokeWidth={1.6} /> },
  cream: { width: 24, height: 24, draw: null },
} satisfies Record<Hatch, Tile>;

/** One tile of a hatch in its own units, to be repeated by hand where a pattern would become a picture. */
export const hatchTile = (hatch: Hatch): Tile => tiles[hatch];

/** A pattern for the `defs` of one drawing; fill a shape with `url(#id)`. Plain cream draws nothing. */
export function HatchPattern(props: {
  readonly id: string;
  readonly hatch: Hatch;
  readonly ink?: string;
  readonly scale?: number;
  readonly strength?: number;
}): ReactNode {
  const { id, hatch, ink = INK, scale = 1, strength = 1 } = props;
  const tile: Tile = tiles[hatch];
  return (
    <pattern id={id} width={tile.width} height={tile.height} patternUnits="userSpaceOnUse" patternTransform={`scale(${scale})`}>
      <g fill="none" stroke={ink} strokeWidth={1.9} strokeOpacity={strength}>
        {tile.draw}
      </g>
    </pattern>
  );
}
