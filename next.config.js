/** @type {import('next').NextConfig} */
export default {
  // The launcher names the folder after what the build was made from; a bare `next typegen` writes its types into .next.
  distDir: process.env.JARWRIGHT_BUILD || '.next',
  // `npm run check` and `npm test` run the type checker over everything, tests included; a shop's first start need not do it again.
  typescript: { ignoreBuildErrors: true },
  reactStrictMode: true,
  poweredByHeader: false,
  images: { unoptimized: true },
};
