// One small shop for all journeys. It must end in good order and have said nothing on stderr: a fault that no journey noticed is one.
import { fillSmallShop } from '#test/support/small-shop/fill-small-shop.ts';
import { startShop } from '#test/support/start-shop.ts';

export default async function globalSetup(): Promise<() => Promise<void>> {
  const shop = await startShop({ fill: fillSmallShop });
  process.env.JARWRIGHT_SHOP_URL = shop.url;
  return async () => {
    const { code, stderr } = await shop.stop();
    if (code !== 0 || stderr !== '') throw new Error(`the shop of the journeys ended with ${code} and said:\n${stderr}`);
  };
}
