// The outline of a jar: about as wide as it is high, lid a little wider than the body, feet rounded.

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface JarShape {
  readonly lid: Box;
  readonly body: Box;
  readonly bodyPath: string;
}

/** Shape inside a box of this size, placed at x, y. */
export function jarShape(width: number, height: number, x = 0, y = 0): JarShape {
  const lidHeight = Math.round(Math.min(78, width * 0.21));
  const shoulder = Math.round(width * 0.042);
  const lid = { x, y, width, height: lidHeight };
  const body = { x: x + shoulder, y: y + lidHeight, width: width - 2 * shoulder, height: height - lidHeight - 2 };
  const foot = Math.round(Math.min(46, width * 0.15));
  const right = body.x + body.width;
  const bottom = body.y + body.height;
  const bodyPath =
    `M${body.x} ${body.y}V${bottom - foot}Q${body.x} ${bottom} ${body.x + foot} ${bottom}` +
    `H${right - foot}Q${right} ${bottom} ${right} ${bottom - foot}V${body.y}Z`;
  return { lid, body, bodyPath };
}
