// One icon. It is decoration for the word beside it, so a reader skips it.
import type { ReactNode } from 'react';
import { iconPaths, mirroredIcons } from './icon.data.ts';

export type IconName = keyof typeof iconPaths;

export function Icon({ name, size = '1.25em' }: { readonly name: IconName; readonly size?: number | string }): ReactNode {
  return (
    <svg
      width={size}
      height={size}
      viewBox="0 0 24 24"
      fill="none"
      stroke="currentColor"
      strokeWidth={2}
      strokeLinecap="square"
      strokeLinejoin="miter"
      aria-hidden="true"
      data-mirror={mirroredIcons.has(name) ? '' : undefined}
    >
      {iconPaths[name].map((path) => (
        <path key={path} d={path} />
      ))}
    </svg>
  );
}
