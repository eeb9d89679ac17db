// The key of one wish, so that a wish sent twice is granted once. Made from getRandomValues, since browsers keep crypto.randomUUID from
// pages that come over plain HTTP from another machine, and a shop's own network is just that.

/** A random UUID, version 4 (RFC 9562, section 5.4). */
export function newRequestKey(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16)).map(withVersionAndVariant);
  const hex = Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}

/** The version stands in the upper half of byte 6, the variant in the upper two bits of byte 8. */
function withVersionAndVariant(byte: number, at: number): number {
  if (at === 6) return (byte & 0x0f) | 0x40;
  return at === 8 ? (byte & 0x3f) | 0x80 : byte;
}
