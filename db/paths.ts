// What lies where in the data folder. Everything a shop owns is under this one folder, so that a backup can be whole.
import { join } from 'node:path';

export const shopFile = (dataDir: string): string => join(dataDir, 'shop.db');
export const lockFile = (dataDir: string): string => join(dataDir, 'shop.lock');
/** Readable although the lock file is not while it is held. */
export const lockHolderFile = (dataDir: string): string => join(dataDir, 'shop.lock.txt');
/** Evidence files, named by the SHA-256 of their bytes. */
export const evidenceDir = (dataDir: string): string => join(dataDir, 'evidence');
export const backupsDir = (dataDir: string): string => join(dataDir, 'backups');
