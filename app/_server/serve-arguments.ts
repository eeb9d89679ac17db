// The command line of the server. What is not understood is refused with the sentence to show, never ignored.
import { isIP } from 'node:net';
import { hostname } from 'node:os';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';

export type ServeArguments = {
  readonly host: string;
  readonly port: number;
  /** Start an empty data folder without the demo shop. */
  readonly isEmpty: boolean;
  /** Names beside addresses and `localhost` under which browsers may reach the server. */
  readonly names: readonly string[];
};

export const USAGE = 'npm start -- [--host ADDRESS] [--port NUMBER] [--name HOSTNAME] [--empty]';

type Parsed = { readonly host: string; readonly port: string; readonly names: readonly string[]; readonly isEmpty: boolean };

/** Reads `--key value` and `--key=value`. The machine's own name is always among the names. */
export function parseServeArguments(args: readonly string[]): Result<ServeArguments, string> {
  const own = hostname().toLowerCase();
  const read = readFlags(args.flatMap(splitAtEquals), { host: '127.0.0.1', port: '3000', names: [own, `${own}.local`], isEmpty: false });
  if (!read.ok) return read;
  const { host, port, names, isEmpty } = read.value;
  if (host !== 'localhost' && isIP(host) === 0)
    return refuse(`--host takes an address of this machine such as 127.0.0.1 or 0.0.0.0, not "${host}".`);
  if (!/^\d{1,5}$/.test(port) || Number(port) > 65_535) return refuse(`--port takes a number from 0 to 65535, not "${port}".`);
  return accept({ host, port: Number(port), names, isEmpty });
}

const splitAtEquals = (arg: string): string[] => {
  const match = /^(--[a-z]+)=(.*)$/.exec(arg);
  return match ? match.slice(1) : [arg];
};

function readFlags(args: readonly string[], soFar: Parsed): Result<Parsed, string> {
  const [flag, value, ...rest] = args;
  if (flag === undefined) return accept(soFar);
  if (flag === '--empty') return readFlags(args.slice(1), { ...soFar, isEmpty: true });
  if (flag !== '--host' && flag !== '--port' && flag !== '--name') return refuse(`"${flag}" is not understood. Usage: ${USAGE}`);
  if (value === undefined || value === '') return refuse(`${flag} needs a value. Usage: ${USAGE}`);
  if (flag === '--host') return readFlags(rest, { ...soFar, host: value });
  if (flag === '--port') return readFlags(rest, { ...soFar, port: value });
  return readFlags(rest, { ...soFar, names: [...soFar.names, value.toLowerCase()] });
}
