// Why the server could not start, as the one sentence that a shop's owner can act on. What is not listed is a fault of the program.

import { UnfitFile } from '#db/open.ts';

type Place = { readonly dataDir: string; readonly host: string; readonly port: number };

/** The code of a system's or driver's error, or its class name for our own. */
const codeOf = (error: unknown): string => {
  if (!(error instanceof Error)) return '';
  return 'code' in error && typeof error.code === 'string' ? error.code : error.name;
};

/** The sentence, or null for a fault. */
export function startFailure(error: unknown, { dataDir, host, port }: Place): string | null {
  const code = codeOf(error);
  if (isListening(error)) return listenFailure(code, host, port);
  if (error instanceof UnfitFile) return error.message;
  if (code === 'LockHeld') return `The data folder ${dataDir} is in use by ${holderOf(error)}: stop that first.`;
  if (/^(ENOSPC|EDQUOT|SQLITE_FULL)/.test(code)) return `The disk that holds ${dataDir} is full: make room and start again.`;
  if (/^(EEXIST|ENOTDIR)$/.test(code)) return `The data folder ${dataDir} cannot be used: a file stands in its place.`;
  if (/^(EACCES|EPERM|EROFS|ENOENT|SQLITE_READONLY|SQLITE_CANTOPEN|SQLITE_PERM)/.test(code))
    return `The data folder ${dataDir} cannot be written: give this user the right, or set JARWRIGHT_DATA to another folder.`;
  if (/^SQLITE_(NOTADB|CORRUPT)/.test(code))
    return `The shop's file in ${dataDir} is damaged or not a shop's file: put a backup in its place with npm run restore.`;
  return null;
}

const isListening = (error: unknown): boolean =>
  error instanceof Error && 'syscall' in error && (error.syscall === 'listen' || error.syscall === 'bind');

function listenFailure(code: string, host: string, port: number): string | null {
  if (code === 'EADDRINUSE') return `Port ${port} on ${host} is taken: stop what uses it, or choose another with --port.`;
  if (code === 'EADDRNOTAVAIL') return `${host} is no address of this machine: choose another with --host.`;
  if (code === 'EACCES') return `Port ${port} may not be used by this user: choose one from 1024 up with --port.`;
  return null;
}

const holderOf = (error: unknown): string =>
  error instanceof Error && 'holder' in error && typeof error.holder === 'string' ? error.holder : 'another process';
