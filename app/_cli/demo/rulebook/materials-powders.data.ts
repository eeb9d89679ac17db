// Clays, pigments and other powders. Ranges of practice; invented for the demonstration where no handbook has a figure.
import { POWDER_ACIDITY } from './acidity.data.ts';
import { pigment, powder, window } from './material-row.ts';

/** What every mined dust must show. */
const DUST = ['identity', 'heavy metals', 'crystalline quartz'];

export const POWDER_MATERIALS = [
  powder('kaolin', 'KAO', 'Kaolin, white', { densityMgPerMl: 2600, oilAbsorptionMgPer100g: 45_000, phFresh: window(300, 900), acidity: POWDER_ACIDITY.kaolin, certificateItems: [...DUST, 'total count'] }),
  powder('illite', 'ILL', 'Illite, green', { densityMgPerMl: 2700, oilAbsorptionMgPer100g: 40_000, phFresh: window(350, 900), acidity: POWDER_ACIDITY.illite, certificateItems: [...DUST, 'total count', 'carbonate at most 0.3 %'] }),
  pigment('titanium-dioxide', 'TIO', 'Titanium dioxide', { densityMgPerMl: 4100, oilAbsorptionMgPer100g: 20_000, phFresh: window(200, 1000) }),
  pigment('iron-oxide-red', 'FER', 'Iron oxide, red', { classes: ['iron'], densityMgPerMl: 5200, oilAbsorptionMgPer100g: 30_000, phFresh: window(300, 1000) }),
  pigment('chromium-oxide-green', 'CRG', 'Chromium oxide, green', { certificateItems: ['identity', 'heavy metals', 'free of chromate'], densityMgPerMl: 5200, oilAbsorptionMgPer100g: 15_000, phFresh: window(200, 1100) }),
  powder('montmorillonite', 'MON', 'Montmorillonite', { densityMgPerMl: 2400, oilAbsorptionMgPer100g: 50_000, phFresh: window(350, 900), acidity: POWDER_ACIDITY.montmorillonite, certificateItems: [...DUST, 'total count', 'exchange capacity'], classes: ['clay', 'swelling-clay'] }),
  powder('bentonite', 'BEN', 'Bentonite, sodium', { densityMgPerMl: 2400, oilAbsorptionMgPer100g: 45_000, phFresh: window(400, 1000), acidity: POWDER_ACIDITY.bentonite, certificateItems: [...DUST, 'total count', 'exchange capacity'], classes: ['clay', 'swelling-clay'] }),
  powder('charcoal-powder', 'CHA', 'Charcoal powder', { densityMgPerMl: 1900, oilAbsorptionMgPer100g: 120_000, phFresh: window(300, 900), acidity: POWDER_ACIDITY.charcoal, classes: ['adsorbent'], origin: 'plant', colours: false, certificateItems: ['identity', 'heavy metals', 'total count', 'polycyclic aromatics'] }),
  powder('mica', 'MIC', 'Mica', { densityMgPerMl: 2800, oilAbsorptionMgPer100g: 50_000, phFresh: window(200, 1000), acidity: POWDER_ACIDITY.inert, classes: ['inert'], colours: true, certificateItems: DUST }),
  powder('silica', 'SIL', 'Silica, hydrated', { densityMgPerMl: 2000, oilAbsorptionMgPer100g: 200_000, phFresh: window(200, 800), acidity: POWDER_ACIDITY.silica, classes: ['inert'], certificateItems: DUST }),
  powder('avena-sativa-kernel-flour', 'OAT', 'Colloidal oatmeal', { densityMgPerMl: 1400, oilAbsorptionMgPer100g: 90_000, phFresh: window(400, 800), acidity: POWDER_ACIDITY.oat, classes: ['botanical'], tags: ['oat', 'gluten'], origin: 'plant', maxTemperatureC: 60, certificateItems: ['identity', 'total count', 'pesticides'] }),
  powder('allantoin', 'ALL', 'Allantoin', { densityMgPerMl: 1450, phFresh: window(350, 800), acidity: POWDER_ACIDITY.inert, kind: 'soluble-powder', classes: ['inert'], origin: 'synthetic', maxTemperatureC: 60 }),
  pigment('iron-oxide-yellow', 'FEY', 'Iron oxide, yellow', { densityMgPerMl: 4250, oilAbsorptionMgPer100g: 45_000, phFresh: window(300, 1000), classes: ['iron'] }),
  pigment('iron-oxide-black', 'FEB', 'Iron oxide, black', { densityMgPerMl: 5150, oilAbsorptionMgPer100g: 25_000, phFresh: window(300, 1000), classes: ['iron'] }),
  pigment('ultramarines', 'ULT', 'Ultramarines', { densityMgPerMl: 2350, oilAbsorptionMgPer100g: 35_000, phFresh: window(600, 1000), classes: ['acid-sensitive'], acidity: POWDER_ACIDITY.ultramarines }),
  pigment('manganese-violet', 'MNV', 'Manganese violet', { densityMgPerMl: 2800, oilAbsorptionMgPer100g: 30_000, phFresh: window(400, 700) }),
  pigment('zinc-oxide', 'ZNO', 'Zinc oxide', { densityMgPerMl: 5600, oilAbsorptionMgPer100g: 19_000, phFresh: window(600, 900), classes: ['acid-consumer'], acidity: POWDER_ACIDITY.zincOxide }),
  pigment('calcium-carbonate', 'CAC', 'Calcium carbonate', { densityMgPerMl: 2700, oilAbsorptionMgPer100g: 18_000, phFresh: window(650, 1000), classes: ['acid-consumer', 'carbonate'], acidity: POWDER_ACIDITY.calciumCarbonate }),
];
