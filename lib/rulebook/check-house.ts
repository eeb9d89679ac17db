// Figures that the house shares between checks: each in the range where the sums that use it make sense.
// A zero where something is divided, or a tolerance of the whole, would stop a shop far from its cause.
import type { DocumentPath } from '../base/document-fault.ts';
import { WHOLE_PPM } from '../units/share.ts';
import type { Book } from './book.ts';
import type { Faults } from './soundness-fault.ts';
import { fault } from './soundness-fault.ts';

/** A value with the least and the most that make sense. */
interface Ranged {
  readonly path: DocumentPath;
  readonly found: number;
  readonly least: number;
  readonly most: number;
}

const MOST = 1_000_000_000;

const atLeastOne = (path: DocumentPath, found: number, most = MOST): Ranged => ({ path, found, least: 1, most });
/** More than nothing and less than the whole. */
const trueShare = (path: DocumentPath, found: number): Ranged => ({ path, found, least: 1, most: WHOLE_PPM - 1 });

export function* checkHouse(book: Book): Faults {
  for (const { path, found, least, most } of [...houseRanges(book), ...baseRanges(book), ...materialRanges(book)]) {
    if (found < least || found > most) yield fault(path, 'out-of-range', { found, least, most });
  }
}

function houseRanges({ rulebook: { house } }: Book): readonly Ranged[] {
  const { bands, exposure, ranking } = house;
  const at = (...path: DocumentPath): DocumentPath => ['house', ...path];
  return [
    { path: at('phErrorX100'), found: house.phErrorX100, least: 1, most: 300 },
    { path: at('wettingSparePpm'), found: house.wettingSparePpm, least: WHOLE_PPM, most: 10 * WHOLE_PPM },
    trueShare(at('bands', 'usualPpm'), bands.usualPpm),
    { path: at('bands', 'nearLimitTauPpm'), found: bands.nearLimitTauPpm, least: 1, most: bands.usualPpm },
    trueShare(at('bands', 'wettingOilPpm'), bands.wettingOilPpm),
    trueShare(at('bands', 'creamPpm'), bands.creamPpm),
    atLeastOne(at('exposure', 'amountPerUseMg'), exposure.amountPerUseMg),
    atLeastOne(at('exposure', 'usesPerDayCount'), exposure.usesPerDayCount),
    atLeastOne(at('exposure', 'usesPerWeekCount'), exposure.usesPerWeekCount, 7 * exposure.usesPerDayCount),
    { path: at('exposure', 'retentionPpm'), found: exposure.retentionPpm, least: 1, most: WHOLE_PPM },
    atLeastOne(at('exposure', 'bodyWeightG'), exposure.bodyWeightG),
    atLeastOne(at('exposure', 'faceAreaCm2'), exposure.faceAreaCm2),
    atLeastOne(at('exposure', 'marginFloorCount'), exposure.marginFloorCount),
    // An area under the scenario's own would let an answer buy what the edition refuses.
    ...exposure.areas.map(
      ({ factorPpm }, index): Ranged => ({
        path: at('exposure', 'areas', index, 'factorPpm'),
        found: factorPpm,
        least: WHOLE_PPM,
        most: MOST,
      }),
    ),
    atLeastOne(at('jarLifeMonths'), house.jarLifeMonths, 1200),
    atLeastOne(at('openedLabelMonths'), house.openedLabelMonths, 1200),
    atLeastOne(at('ranking', 'irritancyStepUnits'), ranking.irritancyStepUnits),
    atLeastOne(at('ranking', 'priceStepMinor'), ranking.priceStepMinor),
    ...(house.phCorrection ? [trueShare(at('phCorrection', 'maxSharePpm'), house.phCorrection.maxSharePpm)] : []),
  ];
}

function baseRanges({ rulebook: { base } }: Book): readonly Ranged[] {
  return [
    trueShare(['base', 'wettingOilPpm'], base.wettingOilPpm),
    trueShare(['base', 'allowancePpm'], base.allowancePpm),
    atLeastOne(['base', 'mostActivesCount'], base.mostActivesCount, 100),
    atLeastOne(['base', 'densityMgPerMl'], base.densityMgPerMl),
    atLeastOne(['base', 'inUseDays'], base.inUseDays),
    ...base.preservation.preservatives.map((one, index) =>
      trueShare(['base', 'preservation', 'preservatives', index, 'provenMinPpm'], one.provenMinPpm),
    ),
  ];
}

function materialRanges({ rulebook: { substances, materials, stocks, actives } }: Book): readonly Ranged[] {
  const optional = (path: DocumentPath, found: number | undefined): readonly Ranged[] =>
    found === undefined ? [] : [atLeastOne(path, found)];
  return [
    ...substances.flatMap(({ exposure }, index) =>
      optional(['substances', index, 'exposure', 'systemicPodUgPerKgDay'], exposure?.systemicPodUgPerKgDay),
    ),
    ...materials.map((material, index) => atLeastOne(['materials', index, 'densityMgPerMl'], material.densityMgPerMl)),
    ...materials.flatMap((one, index) => optional(['materials', index, 'oilAbsorptionMgPer100g'], one.oilAbsorptionMgPer100g)),
    ...stocks.flatMap((stock, index) => optional(['stocks', index, 'inUseDays'], stock.inUseDays)),
    ...stocks.flatMap((stock, index) => optional(['stocks', index, 'madeHereHours'], stock.madeHereHours)),
    ...actives.map((active, index) => atLeastOne(['actives', index, 'strengthPpm'], active.strengthPpm, WHOLE_PPM)),
    ...actives.flatMap((one, index) => (one.tauPpm === undefined ? [] : [trueShare(['actives', index, 'tauPpm'], one.tauPpm)])),
  ];
}
