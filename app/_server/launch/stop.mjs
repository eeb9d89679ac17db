// Every failure before the server runs is one of these: one sentence, the failing command, its last lines.

/** Ends the launcher with exit code 1. `tail` holds the last lines that the failing command printed. */
export class Stop extends Error {
  /** @param {string} sentence @param {{ command?: string, tail?: readonly string[] }} [detail] */
  constructor(sentence, { command, tail = [] } = {}) {
    super(sentence);
    this.name = 'Stop';
    this.command = command;
    this.tail = tail;
  }
}

/** The text a person sees for a failure. @param {Stop} stop */
export function stopText(stop) {
  const command = stop.command ? [`  command: ${stop.command}`] : [];
  return [`jarwright: ${stop.message}`, ...command, ...stop.tail.map((line) => `  | ${line}`)].join('\n');
}
