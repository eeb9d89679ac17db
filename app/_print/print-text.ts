// Words on paper, and the names of what is weighed.
import type { LineName } from '#app/_flows/card-names.ts';
import type { Text } from '#app/_ui/text/create-text.ts';
import { createText } from '#app/_ui/text/create-text.ts';
import type { PrintKey } from '#app/_ui/text/print/en.ts';
import { en } from '#app/_ui/text/print/en.ts';

export type PrintText = Text<PrintKey>;

const text: PrintText = createText('en', { en });

export const printText = (): PrintText => text;

export function printName(name: LineName): string {
  // A number and its percent sign stay on one line.
  if (name.kind === 'stock') return (name.lookAlikeName ?? name.name).replaceAll(' %', '\u00a0%');
  return name.kind === 'cream' ? text.t('line-cream', { code: name.baseCode }) : text.t('line-oil');
}
