// A broken invariant is a fault of the program, never an answer: it throws and the edge turns it into a fault id.

export class Fault extends Error {
  override readonly name = 'Fault';
}

/** Throws a Fault unless the condition holds. The message is for the log, not for a person. */
export function invariant(condition: unknown, message: string): asserts condition {
  if (!condition) throw new Fault(message);
}

/** The end of every switch over a closed union: reached only when a case was forgotten. */
export function assertNever(value: never): never {
  throw new Fault(`unhandled case: ${JSON.stringify(value)}`);
}
