// The small shop in a data folder, made as the demonstration is, with its people.
import { fillWithDemoShop } from '#app/_cli/demo/fill-folder.ts';
import { smallLots } from './lots.data.ts';
import { smallRulebook } from './small-rulebook.ts';

export const fillSmallShop = (dataDir: string): Promise<void> =>
  fillWithDemoShop(dataDir, { rulebook: smallRulebook, shelf: { kind: 'fresh', lots: smallLots } });
