// What a customer may read of "why not": a name, whether it fits, and the codes of plain reasons. Numbers and rules stay here.
import { FINDING_CODES } from '#lib/base/finding.ts';
import type { Finding } from '#lib/base/finding.ts';
import type { Book } from '#lib/rulebook/book.ts';
import { need } from '#lib/rulebook/book.ts';
import type { Lang } from '#lib/rulebook/language.ts';
import type { Fit, Fits } from '#lib/variants/what-fits.ts';

export interface WhyNotRow {
  readonly name: string;
  readonly part: 'shade' | 'active';
  readonly fits: boolean;
  readonly reasons: readonly { readonly code: string; readonly isPersonal: boolean }[];
}

const PERSON_CHECK = 13;
const MOST_REASONS = 2;

/** One row a shade and one an active: it fits when any of its levels does; else the reasons of its lowest level. */
export function whyNotRows(book: Book, lang: Lang, fits: Fits): readonly WhyNotRow[] {
  const shades = fits.shades.map(({ shadeId, fit }) => row(need(book.shades, shadeId).name[lang] ?? shadeId, 'shade', [fit]));
  const activeIds = [...new Set(fits.levels.map(({ chosen }) => chosen.activeId))];
  const actives = activeIds.map((activeId) =>
    row(need(book.actives, activeId).name[lang] ?? activeId, 'active', fits.levels.filter(({ chosen }) => chosen.activeId === activeId).map(({ fit }) => fit)),
  );
  return [...shades, ...actives];
}

function row(name: string, part: WhyNotRow['part'], fits: readonly Fit[]): WhyNotRow {
  const [lowest] = fits;
  if (!lowest || fits.some((fit) => fit.fits)) return { name, part, fits: true, reasons: [] };
  return { name, part, fits: false, reasons: lowest.fits ? [] : reasonsOf(lowest.findings) };
}

/** At most two; a reason that came from an answer first, and marked so that the screen keeps it covered until asked. */
function reasonsOf(findings: readonly Finding[]): WhyNotRow['reasons'] {
  const codes = [...new Set(findings.map((found) => found.code))];
  const reasons = codes.map((code) => ({ code, isPersonal: FINDING_CODES[code].check === PERSON_CHECK }));
  return [...reasons.filter((reason) => reason.isPersonal), ...reasons.filter((reason) => !reason.isPersonal)].slice(0, MOST_REASONS);
}
