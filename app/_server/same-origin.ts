// A write must come from one of our own pages: browsers send Origin with every POST and Sec-Fetch-Site where the page is trustworthy
// (W3C Fetch Metadata). Either one that says otherwise, or no Origin at all, refuses it. Behind a proxy that ends TLS the scheme
// differs, so hosts are compared and not whole origins.

/** Whether a write's headers show that it was started by a page of this server. */
export function isSameOrigin(request: Request): boolean {
  const site = request.headers.get('sec-fetch-site');
  if (site !== null && site !== 'same-origin') return false;
  const origin = request.headers.get('origin');
  if (origin === null || !URL.canParse(origin)) return false;
  return new URL(origin).host === (request.headers.get('host') ?? new URL(request.url).host);
}
