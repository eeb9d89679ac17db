// What the formulator said of two things that meet: the same five marks in the grid, the list and the diff.
import type { ReactNode } from 'react';

export const JUDGEMENTS = ['not-judged', 'fine', 'caution', 'limit', 'never'] as const;
export type JudgementKind = (typeof JUDGEMENTS)[number];

const shapes = {
  'not-judged': <path d="M7.5 8.2a4.5 4.5 0 1 1 6.9 3.8c-1.7 1.1-2.4 1.8-2.4 3.6M12 18.3v2.6" fill="none" strokeWidth={2.4} />,
  fine: <circle cx={12} cy={12} r={8} fill="none" strokeWidth={2.2} />,
  caution: <path d="M12 4L21 19.5H3Z" fill="none" strokeWidth={2.2} />,
  limit: <path d="M12 2.8L21.2 12L12 21.2L2.8 12Z" fill="none" strokeWidth={2.2} />,
  never: <rect x={4} y={4} width={16} height={16} fill="currentColor" stroke="none" />,
} satisfies Record<JudgementKind, ReactNode>;

export function JudgementMark({ kind, size = '1.125em' }: { readonly kind: JudgementKind; readonly size?: number | string }): ReactNode {
  return (
    <svg width={size} height={size} viewBox="0 0 24 24" stroke="currentColor" aria-hidden="true">
      {shapes[kind]}
    </svg>
  );
}
