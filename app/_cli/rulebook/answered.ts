// The three ways in which a command can end.

export interface Answered {
  readonly exitCode: 0 | 1 | 2;
  readonly output: unknown;
}

export const yes = (output: unknown): Answered => ({ exitCode: 0, output });
export const no = (output: unknown): Answered => ({ exitCode: 1, output });
export const notAsked = (error: string, more: object = {}): Answered => ({ exitCode: 2, output: { error, ...more } });
