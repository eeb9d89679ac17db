// Passwords as argon2id (RFC 9106) in its usual text form, made and checked off the main thread by node:crypto.
import { argon2, randomBytes, timingSafeEqual } from 'node:crypto';

/** 19 MiB, 2 passes, 1 lane: the OWASP floor for argon2id. */
const COST = { memory: 19_456, passes: 2, parallelism: 1 } as const;
const TAG_BYTES = 32;

/** '$argon2id$v=19$m=…,t=…,p=…$salt$tag' for a new secret. */
export async function hashPassword(password: string): Promise<string> {
  const nonce = randomBytes(16);
  const tag = await tagOf(password, nonce, COST);
  return `$argon2id$v=19$m=${COST.memory},t=${COST.passes},p=${COST.parallelism}$${unpadded(nonce)}$${unpadded(tag)}`;
}

/** True when the password made this hash. A hash of another form is never right; null takes as long as a wrong password. */
export async function isPassword(password: string, hash: string | null): Promise<boolean> {
  const parts = /^\$argon2id\$v=19\$m=(\d+),t=(\d+),p=(\d+)\$([^$]+)\$([^$]+)$/.exec(hash ?? '');
  if (!parts) {
    await tagOf(password, Buffer.alloc(16), COST);
    return false;
  }
  const [, memory, passes, parallelism, nonce = '', tag = ''] = parts;
  const expected = Buffer.from(tag, 'base64');
  const found = await tagOf(password, Buffer.from(nonce, 'base64'), {
    memory: Number(memory),
    passes: Number(passes),
    parallelism: Number(parallelism),
  });
  return expected.length === found.length && timingSafeEqual(expected, found);
}

function tagOf(
  password: string,
  nonce: Buffer,
  { memory, passes, parallelism }: { memory: number; passes: number; parallelism: number },
): Promise<Buffer> {
  const message = Buffer.from(password.normalize('NFKC'), 'utf8');
  return new Promise((done, fail) =>
    argon2('argon2id', { message, nonce, parallelism, tagLength: TAG_BYTES, memory, passes }, (error, tag) =>
      error ? fail(error) : done(tag),
    ),
  );
}

const unpadded = (bytes: Buffer): string => bytes.toString('base64').replace(/=+$/, '');
