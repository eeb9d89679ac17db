// The web: what the content security policy would block, or what would let markup and server code in by the back door.
import ts from 'typescript';
import type { Finding, House } from './house.ts';
import { findingAt, hasDirective, lookAt } from './house.ts';

const isApp = (path: string): boolean => path.startsWith('app/');

/** A style attribute is blocked by the policy: geometry and colour go into SVG attributes or classes. A spread object may not hide one. */
export const styleAttributes = (house: House): Finding[] =>
  lookAt(
    house,
    (path) => path.endsWith('.tsx'),
    (node) => {
      const hidden =
        ts.isJsxSpreadAttribute(node) &&
        ts.isObjectLiteralExpression(node.expression) &&
        node.expression.properties.some(({ name }) => name?.getText() === 'style');
      const shown = ts.isJsxAttribute(node) && node.name.getText() === 'style';
      if (hidden || shown) return 'a style attribute: use a class or an SVG attribute';
      const tag = ts.isJsxOpeningElement(node) || ts.isJsxSelfClosingElement(node) ? node : undefined;
      const bare = tag?.tagName.getText() === 'style' && !tag.attributes.properties.some(({ name }) => name?.getText() === 'nonce');
      return bare ? 'a style element without a nonce' : undefined;
    },
  );

const markup = /^(dangerouslySetInnerHTML|innerHTML|outerHTML|insertAdjacentHTML|srcDoc|srcdoc)$/;

/** Text put into the page as markup, or as code. */
export const rawMarkup = (house: House): Finding[] =>
  lookAt(house, isApp, (node) => {
    if (ts.isIdentifier(node) && markup.test(node.text)) return `${node.text} puts text into the page as markup`;
    const runs =
      (ts.isCallExpression(node) && node.expression.getText() === 'eval') ||
      (ts.isNewExpression(node) && node.expression.getText() === 'Function');
    return runs ? 'text run as code' : undefined;
  });

/** Action ids are bound to one build, and a kiosk's tab outlives builds: everything the browser starts is a route handler. */
export const serverActions = (house: House): Finding[] => [
  ...[...house.sources.values()]
    .filter((source) => isApp(source.fileName) && hasDirective(source, 'use server'))
    .map((source) => findingAt(source, 'a file of server actions')),
  ...lookAt(house, isApp, (node) =>
    ts.isExpressionStatement(node) &&
    ts.isBlock(node.parent) &&
    ts.isStringLiteral(node.expression) &&
    node.expression.text === 'use server'
      ? 'a server action'
      : undefined,
  ),
];
