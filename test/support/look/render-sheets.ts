// The sheets as the server would send them, for checks of their markup.
import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { sheets } from './sheets.tsx';

export const sheetNames = Object.keys(sheets);

export function renderSheet(name: string): string {
  const sheet = sheets[name];
  if (!sheet) throw new Error(`no sheet ${name}`);
  return renderToStaticMarkup(createElement(sheet));
}
