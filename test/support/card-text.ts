// Cards as readable text, for golden files and for proof-reading. Whoever wrote the recipe must be able to check it without a program.
import type { Card, CardLine, Step } from '#lib/weighing/card.ts';
import type { Grown } from '#lib/weighing/grow-batch.ts';

/** Grams at a scale's resolution: 1980000 at 0.01 g is "1.98". */
export function grams(massUg: number, stepUg: number): string {
  return (massUg / 1_000_000).toFixed(Math.max(0, 6 - Math.round(Math.log10(stepUg))));
}

const nameOf = (line: CardLine): string => {
  if (line.source.kind === 'stock') return line.lookAlikeName ?? line.name.en ?? line.code;
  return line.source.kind === 'cream' ? 'Cream' : 'Wetting oil';
};

/** The whole card: lines as a table, then the order of work. */
export function cardText(card: Card): string {
  const total = grams(card.totalUg, 10_000);
  return [
    `Batch ${grams(card.batchUg, 10_000)} g for ${grams(card.netUg, 10_000)} g, total of the lines ${total} g`,
    '',
    ...card.lines.map(lineText),
    '',
    ...card.steps.map((step, index) => `${String(index + 1).padStart(2)}. ${stepText(card, step)}`),
  ].join('\n');
}

function lineText(line: CardLine): string {
  const { stepUg } = line.scale;
  const figures = `${grams(line.targetUg, stepUg).padStart(8)} g  from ${grams(line.loUg, stepUg)} to ${grams(line.hiUg, stepUg)} g`;
  const lots = line.lots.map((lot) => `${lot.lotCode} ${grams(lot.massUg, stepUg)} g`).join(' + ');
  const second = line.needsSecondPerson ? '  second person' : '';
  return `${line.lineNo}  ${nameOf(line).padEnd(30)}${figures}  exact ${line.exactUgText} ug  ${line.container} on ${line.scale.code}  ${lots}${second}`;
}

function stepText(card: Card, step: Step): string {
  const named = (lineNo: number): string => {
    const line = card.lines.find((one) => one.lineNo === lineNo);
    return line ? `${lineNo} ${nameOf(line)}` : String(lineNo);
  };
  switch (step.kind) {
    case 'fitness':
      return `fitness: ${step.scaleIds.join(', ')}${step.needsMeter ? ', pH meter' : ''}`;
    case 'clearance':
      return `clearance${step.fullCleanAfterTags.length > 0 ? `: full clean first, after ${step.fullCleanAfterTags.join(', ')}` : ''}`;
    case 'protection':
      return `protection${step.hasDust ? ' against dust' : ''}: ${step.cautionIds.join(', ')}`;
    case 'bind-jar':
      return `bind jar and lid, tare ${step.vesselCode}`;
    case 'weigh':
      return `weigh ${named(step.lineNo)}`;
    case 'paste':
      return 'work to a smooth paste';
    case 'cream':
      return `fold in ${named(step.lineNo)}: ${step.portionsUg.map((portion) => grams(portion, 10_000)).join(', ')} g`;
    case 'temperature':
      return `at most ${step.atMostC} °C${step.isTapNeeded ? '' : ', no need to measure'}`;
    case 'dissolve':
      return `dissolve ${step.lineNos.map(named).join(', ')}`;
    case 'draw-down':
      return 'draw-down';
    case 'ph':
      return `pH from ${step.minPhX100 / 100} to ${step.maxPhX100 / 100}, ${step.method}`;
    case 'inspect':
      return `look, smell, colour of ${step.shadeId}`;
    case 'fill':
      return `fill ${grams(step.netUg, 10_000)} g`;
    case 'release':
      return 'label, scan, release';
  }
}

/** A batch made larger: what each line becomes and what is still to be added. */
export function grownText(card: Card, grown: Grown): string {
  const lines = grown.lines.map((one, index) => {
    const line = card.lines[index];
    if (!line) throw new Error(`no line ${one.lineNo} on the card`);
    const { stepUg } = line.scale;
    const topUp = one.into === null ? 'as it is' : `+${grams(one.topUpUg, stepUg)} g into the ${one.into}`;
    return `${one.lineNo}  ${nameOf(line).padEnd(30)}${grams(one.targetUg, stepUg).padStart(8)} g  from ${grams(one.loUg, stepUg)} to ${grams(one.hiUg, stepUg)} g  ${topUp}`;
  });
  return [`Batch ${grams(grown.batchUg, 10_000)} g, total of the lines ${grams(grown.totalUg, 10_000)} g`, '', ...lines].join('\n');
}
