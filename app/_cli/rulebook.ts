// npm run -s rulebook -- check|judge|card|label|count|masks|schema FILE …: the whole computing from outside, JSON in and JSON out.
// Exit code 0: yes. 1: a sound question with the answer no. 2: the question could not be asked.
import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import type { Answered } from './rulebook/answered.ts';
import { notAsked } from './rulebook/answered.ts';
import { COMMANDS, USAGE } from './rulebook/commands.ts';
import { readBook } from './rulebook/read-book.ts';

const OPTIONS = {
  variant: { type: 'string' },
  answers: { type: 'string' },
  size: { type: 'string' },
  market: { type: 'string' },
  lang: { type: 'string' },
  day: { type: 'string' },
} as const;

/** The file's text, or standard input for "-". */
const textOf = (file: string): string => readFileSync(file === '-' ? 0 : file, 'utf8');

function run(args: readonly string[]): Answered {
  const { values, positionals } = parseArgs({ args: [...args], options: OPTIONS, allowPositionals: true });
  const [name = '', file, ...rest] = positionals;
  const command = COMMANDS[name];
  if (!command || rest.length > 0) return notAsked(USAGE);
  if (name === 'schema') return command({ book: null, faults: [], values });
  if (file === undefined) return notAsked(USAGE);
  const read = readBook(textOf(file), name === 'check');
  return read.ok ? command({ ...read.value, values }) : read.refusal;
}

/** What the system or the arguments refuse is a question that could not be asked; a broken invariant stays a fault. */
function answer(args: readonly string[]): Answered {
  try {
    return run(args);
  } catch (error) {
    if (error instanceof TypeError && 'code' in error) return notAsked(`${error.message}\n${USAGE}`);
    if (error instanceof Error && 'syscall' in error) return notAsked(error.message);
    throw error;
  }
}

const { exitCode, output } = answer(process.argv.slice(2));
process.stdout.write(`${JSON.stringify(output, null, 2)}\n`);
process.exitCode = exitCode;
