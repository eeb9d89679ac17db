// The rail beside the work: the card's steps by name, the preparations as one. Weights stand nowhere in it.
import { earth } from '#app/_ui/drawing/earth.data.ts';
import type { Hatch } from '#app/_ui/drawing/hatch.tsx';
import type { RailStep } from '#app/_ui/frames/step-rail.tsx';
import type { BenchView } from '#lib/contracts/bench-view.ts';
import { benchText, shownName, spokenName } from './bench-text.ts';

type ViewStep = BenchView['steps'][number];
type Look = NonNullable<ViewStep['layer']>['look'];

export const FILLS = {
  cream: earth.cream,
  oil: earth.oil,
  'base-clay': earth.kaolin,
  'tint-clay': earth.illite,
  'mineral-colour': earth.green,
  acid: earth.acid,
  botanical: earth.botanical,
  humectant: earth.humectant,
} as const satisfies Record<Look, string>;

export const layerOf = ({
  look,
  fillHex,
}: {
  readonly look: Look;
  readonly fillHex: string | null;
}): { readonly hatch: Hatch; readonly fill: string } => ({
  hatch: look,
  fill: fillHex ?? FILLS[look],
});

const PREPARING: ReadonlySet<ViewStep['kind']> = new Set(['fitness', 'clearance', 'protection', 'bind-jar']);

export function railSteps(steps: BenchView['steps']): readonly RailStep[] {
  const preparing = steps.filter((step) => PREPARING.has(step.kind));
  const working = steps.filter((step) => !PREPARING.has(step.kind));
  const { t } = benchText();
  const first = { id: 'prepare', number: '1', name: t('step-prepare'), state: stateOf(preparing) } as const;
  return [first, ...working.map((step, index) => railStep(step, index + 2))];
}

function stateOf(steps: readonly ViewStep[]): RailStep['state'] {
  if (steps.every((step) => step.state === 'done')) return 'done';
  return steps.some((step) => step.state === 'current') ? 'current' : 'to-come';
}

function railStep({ kind, line, layer, state }: ViewStep, no: number): RailStep {
  const { t } = benchText();
  const number = String(no);
  if (line) {
    const [name, spoken] = [shownName(line), spokenName(line)];
    return {
      id: `${kind}-${no}`,
      number,
      name,
      state,
      ...(name !== spoken && { spokenName: spoken }),
      ...(layer && { layer: layerOf(layer) }),
    };
  }
  return { id: kind, number, name: t(`step-${kind as CheckKind}`), state };
}

type CheckKind = 'paste' | 'temperature' | 'dissolve' | 'draw-down' | 'ph' | 'inspect' | 'fill' | 'release';
