// A drawing that a reader hears by title and description, or that it skips.
import type { ReactNode, SVGProps } from 'react';

export interface DrawingLabel {
  readonly title: string;
  readonly description: string;
}

export function Picture(
  props: Omit<SVGProps<SVGSVGElement>, 'style'> & { readonly id: string; readonly label: DrawingLabel | undefined },
): ReactNode {
  const { id, label, children, ...rest } = props;
  if (!label) {
    return (
      <svg {...rest} aria-hidden="true">
        {children}
      </svg>
    );
  }
  return (
    <svg {...rest} role="img" aria-labelledby={`${id}-title ${id}-description`}>
      <title id={`${id}-title`}>{label.title}</title>
      <desc id={`${id}-description`}>{label.description}</desc>
      {children}
    </svg>
  );
}
