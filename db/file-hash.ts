// Files as their bytes: hashed in pieces, and forced to the disk before anything relies on them.
import { createHash } from 'node:crypto';
import { closeSync, copyFileSync, fsyncSync, openSync, readSync, statSync } from 'node:fs';

const PIECE_BYTES = 1 << 20;

export interface FileBytes {
  readonly sizeBytes: number;
  readonly sha256: string;
}

export function fileBytes(path: string): FileBytes {
  const hash = createHash('sha256');
  const piece = Buffer.alloc(PIECE_BYTES);
  const file = openSync(path, 'r');
  try {
    for (let readBytes = readSync(file, piece); readBytes > 0; readBytes = readSync(file, piece)) hash.update(piece.subarray(0, readBytes));
  } finally {
    closeSync(file);
  }
  return { sizeBytes: statSync(path).size, sha256: hash.digest('hex') };
}

/** Returns when a file, or the list of a folder's names, is on the disk. */
export function forceToDisk(path: string): void {
  const file = openSync(path, 'r');
  try {
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

export function copyDurably(from: string, to: string): void {
  copyFileSync(from, to);
  forceToDisk(to);
}
