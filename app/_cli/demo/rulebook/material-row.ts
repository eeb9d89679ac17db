// What the rows of the demonstration's materials share; a row says only what differs.
import { POWDER_ACIDITY } from './acidity.data.ts';

const INVENTED = 'invented for the demonstration';
export const window = (minPhX100: number, maxPhX100: number) => ({ minPhX100, maxPhX100 });

/** What most liquids and base parts share; a row says only what differs. */
export const material = (id: string, code: string, en: string, more: Record<string, unknown>) => ({
  id,
  code,
  name: { en },
  substances: [{ substanceId: id, sharePpm: 1_000_000 }],
  kind: 'liquid',
  classes: ['inert'],
  tags: [],
  densityMgPerMl: 1000,
  ionicUnitsPerPpm: 0,
  irritancyUnitsPerPpm: 0,
  origin: 'synthetic',
  colours: false,
  allergens: [],
  certificateItems: ['identity'],
  source: INVENTED,
  ...more,
});

/** Insoluble powders: wetted in oil, weighed dry. */
export const powder = (id: string, code: string, en: string, more: Record<string, unknown>) =>
  material(id, code, en, {
    kind: 'insoluble-powder',
    classes: ['clay'],
    origin: 'mineral',
    certificateItems: ['identity', 'heavy metals', 'total count'],
    ...more,
  });

export const pigment = (id: string, code: string, en: string, more: Record<string, unknown>) =>
  powder(id, code, en, {
    kind: 'pigment',
    classes: ['inert'],
    colours: true,
    acidity: POWDER_ACIDITY.inert,
    certificateItems: ['identity', 'heavy metals'],
    ...more,
  });
