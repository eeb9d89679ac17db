// The one root: language, fonts and the look. It waits for the request so that scripts carry the page's nonce.
import type { Metadata, Viewport } from 'next';
import { connection } from 'next/server';
import type { ReactNode } from 'react';
import './_ui/style/look.css';

export const metadata: Metadata = {
  title: 'Jarwright',
  icons: { icon: [{ url: '/mark.svg', type: 'image/svg+xml' }] },
};

export const viewport: Viewport = { width: 'device-width', initialScale: 1, themeColor: '#F4F6F3' };

export default async function RootLayout({ children }: { readonly children: ReactNode }): Promise<ReactNode> {
  await connection();
  return (
    <html lang="en" dir="ltr">
      <body>{children}</body>
    </html>
  );
}
