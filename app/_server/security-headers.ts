// What every reply forbids the browser. Scripts and style elements run only with the request's nonce; nothing is loaded from elsewhere;
// the page may sit in no frame; of the devices only the scales' serial port may be asked for (W3C CSP 3, Permissions Policy, Web Serial).

/** The policy of one request. The request carries it too, since that is where Next looks for the nonce of its own scripts. */
export const contentSecurityPolicy = (nonce: string): string =>
  [
    "default-src 'self'",
    `script-src 'self' 'nonce-${nonce}'`,
    `style-src 'self' 'nonce-${nonce}'`,
    "img-src 'self' data: blob:",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
  ].join('; ');

const FORBIDDEN_DEVICES = ['camera', 'microphone', 'geolocation', 'usb', 'hid', 'midi', 'payment', 'display-capture'];

const CONSTANT = {
  'x-content-type-options': 'nosniff',
  'x-frame-options': 'DENY',
  'referrer-policy': 'same-origin',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'permissions-policy': ['serial=(self)', ...FORBIDDEN_DEVICES.map((device) => `${device}=()`)].join(', '),
};

/** Files whose name holds their hash may be kept for ever (Next says so itself); everything else may not be kept at all. */
export function securityHeaders(path: string, policy: string): Readonly<Record<string, string>> {
  const cache: Record<string, string> = path.startsWith('/_next/static/') ? {} : { 'cache-control': 'no-store' };
  return { ...CONSTANT, ...cache, 'content-security-policy': policy };
}
