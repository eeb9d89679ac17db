// Tokens that let the kiosk name a variant, an active or a level without learning it: sealed with the shop's own key and bound to one edition.
import { createCipheriv, createDecipheriv, createHmac, hkdfSync } from 'node:crypto';

const NONCE_BYTES = 12;
const TAG_BYTES = 16;

export interface Sealer {
  /** The same text under the same edition gives the same token. */
  readonly seal: (editionHash: string, text: string) => string;
  /** The text, or null when the token is broken, forged or of another edition. */
  readonly open: (editionHash: string, token: string) => string | null;
}

/** AES-256-GCM whose nonce is a MAC of the content, so that equal content gives equal tokens and a nonce is never used for two texts. */
export function makeSealer(secret: string): Sealer {
  const key = Buffer.from(hkdfSync('sha256', secret, '', 'seal', 32));
  const nonceKey = Buffer.from(hkdfSync('sha256', secret, '', 'nonce', 32));
  return {
    seal: (editionHash, text) => {
      const nonce = createHmac('sha256', nonceKey).update(`${editionHash}\n${text}`).digest().subarray(0, NONCE_BYTES);
      const cipher = createCipheriv('aes-256-gcm', key, nonce).setAAD(Buffer.from(editionHash));
      const body = Buffer.concat([cipher.update(padded(text), 'utf8'), cipher.final()]);
      return Buffer.concat([nonce, cipher.getAuthTag(), body]).toString('base64url');
    },
    open: (editionHash, token) => {
      const bytes = Buffer.from(token, 'base64url');
      if (bytes.length < NONCE_BYTES + TAG_BYTES) return null;
      const decipher = createDecipheriv('aes-256-gcm', key, bytes.subarray(0, NONCE_BYTES)).setAAD(Buffer.from(editionHash));
      decipher.setAuthTag(bytes.subarray(NONCE_BYTES, NONCE_BYTES + TAG_BYTES));
      return authentic(() =>
        Buffer.concat([decipher.update(bytes.subarray(NONCE_BYTES + TAG_BYTES)), decipher.final()])
          .toString('utf8')
          .trimEnd(),
      );
    },
  };
}

/** Lengths tell recipes apart; padding to whole blocks tells less. */
const BLOCK = 64;
const padded = (text: string): string => text.padEnd(Math.ceil((text.length + 1) / BLOCK) * BLOCK);

/** GCM throws on a tag that does not match: that is an answer here, not a fault. */
function authentic(decrypt: () => string): string | null {
  try {
    return decrypt();
  } catch {
    return null;
  }
}
