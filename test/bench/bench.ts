// What a bench is: it does one real thing and gives figures. A time differs from machine to machine; a count must not.

export type Figures = Readonly<Record<string, number>>;

export type Bench = {
  readonly name: string;
  /** What is done, in a few words. */
  readonly says: string;
  /** `timesCount` makes a run longer: soaking is the same code for longer. */
  readonly run: (timesCount: number) => Figures | Promise<Figures>;
};

/** How long something took, and what it gave. */
export async function timed<T>(work: () => T | Promise<T>): Promise<{ readonly tookMs: number; readonly gave: T }> {
  const startMs = performance.now();
  const gave = await work();
  return { tookMs: performance.now() - startMs, gave };
}
