// Check 4: class rules, possibly only above a level or outside a pH. A pH condition counts against the jar as soon as prediction ± error touches the bad side.
import type { Finding } from '../base/finding.ts';
import { finding } from '../base/finding.ts';
import type { JarPh } from '../chemistry/jar-ph.ts';
import type { Composition } from '../composition/compose.ts';
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import type { ClassRule, ClassSide } from '../rulebook/judgement.ts';
import type { MaterialClass } from '../rulebook/material.ts';
import type { Part } from '../units/share.ts';
import { exceedsPpm, sumParts } from '../units/share.ts';
import type { PairCheck } from './check-pairs.ts';
import { countsAgainst } from './ph-condition.ts';
import type { CautionOwed } from './verdict.ts';

export function checkClasses(book: Book, jar: Composition, jarPh: JarPh): PairCheck {
  const speaking = book.rulebook.classRules.filter((rule) => speaks(book, jar, jarPh, rule));
  return {
    findings: speaking.flatMap((rule): Finding[] => (rule.then.kind === 'refuse' ? [refusal(rule)] : [])),
    cautions: speaking.flatMap((rule): CautionOwed[] =>
      rule.then.kind === 'caution' ? [{ cautionId: rule.then.cautionId, ruleId: rule.id }] : [],
    ),
  };
}

function speaks(book: Book, jar: Composition, jarPh: JarPh, rule: ClassRule): boolean {
  const sides = [rule.first, ...(rule.second ? [rule.second] : [])];
  if (!sides.every((side) => sideCounts(book, jar, side))) return false;
  const window = rule.unlessPhWithin;
  return window === undefined || countsAgainst(jarPh, window.minPhX100, window.maxPhX100);
}

const sideCounts = (book: Book, jar: Composition, side: ClassSide): boolean =>
  exceedsPpm(classPart(book, jar, side.materialClass), jar.whole, side.abovePpm);

/** All materials of a class together, base included. */
export const classPart = (book: Book, jar: Composition, materialClass: MaterialClass): Part =>
  sumParts([...jar.materials].filter(([id]) => need(book.materials, id).classes.includes(materialClass)).map(([, held]) => held));

const refusal = (rule: ClassRule): Finding =>
  finding('class-rule', rule.id, {
    firstClass: rule.first.materialClass,
    secondClass: rule.second?.materialClass ?? null,
    minPhX100: rule.unlessPhWithin?.minPhX100 ?? null,
    maxPhX100: rule.unlessPhWithin?.maxPhX100 ?? null,
  });
