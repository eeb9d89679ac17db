// Check 12: margin of safety of the substances that the safety assessor watches (SCCS Notes of Guidance, 12th revision, SCCS/1647/22).
// A day of use is judged as it is; the weekly mean stands beside it for the assessor and decides nothing.
import type { Finding } from '../base/finding.ts';
import { finding } from '../base/finding.ts';
import { invariant } from '../base/invariant.ts';
import type { Composition } from '../composition/compose.ts';
import { substancePart } from '../composition/compose.ts';
import type { ExposureScenario } from '../rulebook/base.ts';
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import type { Exposure } from '../rulebook/material.ts';
import type { FactorPpm, Part } from '../units/share.ts';
import { factorPpm, part, WHOLE_PPM } from '../units/share.ts';

const PPM = BigInt(WHOLE_PPM);
const UG_PER_MG = 1000n;
const G_PER_KG = 1000n;
const WHOLE_AREA = factorPpm(WHOLE_PPM);

/** PoD / SED as one exact fraction. No dose at all: denominator 0. */
interface Margin {
  readonly numerator: bigint;
  readonly denominator: bigint;
}

/**
 * MoS = PoD × body weight / (amount × uses × retention × area factor × share × absorption).
 * Throws a Fault for a scenario that is not in whole numbers.
 */
function marginOf(scenario: ExposureScenario, exposure: Exposure, dose: { found: Part; whole: Part; areaFactorPpm: FactorPpm }): Margin {
  const perDay =
    BigInt(scenario.amountPerUseMg) *
    UG_PER_MG *
    BigInt(scenario.usesPerDayCount) *
    BigInt(scenario.retentionPpm) *
    BigInt(dose.areaFactorPpm);
  const absorbed = perDay * dose.found * BigInt(exposure.dermalAbsorptionPpm) * G_PER_KG;
  return {
    numerator: BigInt(exposure.systemicPodUgPerKgDay) * BigInt(scenario.bodyWeightG) * dose.whole * PPM * PPM * PPM,
    denominator: absorbed,
  };
}

/** At most 0 where the margin reaches the floor. */
const excessOf = ({ numerator, denominator }: Margin, { marginFloorCount }: ExposureScenario): bigint =>
  BigInt(marginFloorCount) * denominator - numerator;

/** The same over the scenario's own area, as an amount that adds up over what is in the jar. */
export const exposureExcess = (scenario: ExposureScenario, exposure: Exposure, { found, whole }: { found: Part; whole: Part }): bigint =>
  excessOf(marginOf(scenario, exposure, { found, whole, areaFactorPpm: WHOLE_AREA }), scenario);

/** found × `found` ≤ whole × `whole` over the scenario's own area: the share at which the margin falls to its floor, as one exact fraction. */
export function exposureBound(scenario: ExposureScenario, exposure: Exposure): { readonly found: bigint; readonly whole: bigint } {
  const unit = marginOf(scenario, exposure, { found: part(1n), whole: part(1n), areaFactorPpm: WHOLE_AREA });
  return { found: BigInt(scenario.marginFloorCount) * unit.denominator, whole: unit.numerator };
}

/** Findings of check 12. `areaFactorPpm`: how much of the scenario's area is covered; null = all of it. */
export function checkExposure(book: Book, jar: Composition, areaFactorPpm: FactorPpm | null): readonly Finding[] {
  const scenario = book.rulebook.house.exposure;
  return [...jar.substances].flatMap(([substanceId, found]): Finding[] => {
    const { exposure, exposureDemanded } = need(book.substances, substanceId);
    if (found === 0n) return [];
    if (!exposure) return exposureDemanded ? [finding('exposure-no-figure', substanceId, { substanceId })] : [];
    const margin = marginOf(scenario, exposure, { found, whole: jar.whole, areaFactorPpm: areaFactorPpm ?? WHOLE_AREA });
    if (excessOf(margin, scenario) <= 0n) return [];
    const marginX100 = Number((margin.numerator * 100n) / margin.denominator);
    return [finding('exposure-margin', substanceId, { substanceId, marginX100, floorCount: scenario.marginFloorCount })];
  });
}

/** Exposure to one substance, for people: doubles, never compared with. */
export interface ShownExposure {
  readonly sedMgPerKgDay: number;
  readonly marginOfSafety: number;
  /** The same margin over a week of use: chronic systemic effects only. */
  readonly weeklyMarginOfSafety: number;
  /** As applied, before anything is washed or wiped off: what irritation and sensitisation look at. */
  readonly doseUgPerCm2: number;
}

/** Figures for the assessor, or null when the jar holds none of it or no figure is known. */
export function exposureOf(book: Book, jar: Composition, substanceId: string, areaFactorPpm: FactorPpm | null): ShownExposure | null {
  const scenario = book.rulebook.house.exposure;
  const { exposure } = need(book.substances, substanceId);
  const found = substancePart(jar, substanceId);
  if (!exposure || found === 0n) return null;
  invariant(scenario.faceAreaCm2 > 0 && scenario.usesPerDayCount > 0, 'an exposure scenario has an area and at least one use a day');
  const margin = marginOf(scenario, exposure, { found, whole: jar.whole, areaFactorPpm: areaFactorPpm ?? WHOLE_AREA });
  const marginOfSafety = quotient(margin.numerator, margin.denominator);
  const usesOfWeekPerDay = scenario.usesPerWeekCount / (7 * scenario.usesPerDayCount);
  return {
    sedMgPerKgDay: exposure.systemicPodUgPerKgDay / 1000 / marginOfSafety,
    marginOfSafety,
    weeklyMarginOfSafety: marginOfSafety / usesOfWeekPerDay,
    doseUgPerCm2: quotient(BigInt(scenario.amountPerUseMg) * UG_PER_MG * found, BigInt(scenario.faceAreaCm2) * jar.whole),
  };
}

const quotient = (numerator: bigint, denominator: bigint): number =>
  denominator === 0n ? Number.POSITIVE_INFINITY : Number((numerator * PPM * PPM) / denominator) / 1e12;
