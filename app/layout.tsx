import { connection } from 'next/server';
import type { ReactNode } from 'react';

export const metadata = { title: 'Jarwright' };

/** Waits for a request: a page made at build time would carry no nonce and frozen data. */
export default async function RootLayout({ children }: { readonly children: ReactNode }) {
  await connection();
  return (
    <html lang="en">
      <body>{children}</body>
    </html>
  );
}
