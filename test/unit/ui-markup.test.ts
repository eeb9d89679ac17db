// Every sample page, as the server sends it: what the content security policy and assistive technology ask of the shared pieces.
import { describe, expect, test } from 'vitest';
import { renderSheet, sheetNames } from '#test/support/look/render-sheets.ts';

const pages = sheetNames.map((name) => ({ name, markup: renderSheet(name) }));

describe.each(pages)('$name', ({ markup }) => {
  test('has no style attribute and no style element', () => {
    expect(markup).not.toMatch(/\sstyle=|<style/);
  });

  test('uses every id once, and refers only to ids that are there', () => {
    const ids = [...markup.matchAll(/\sid="([^"]+)"/g)].map((match) => match[1]);
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
    const wanted = [...markup.matchAll(/url\(#([^)]+)\)|aria-(?:labelledby|describedby)="([^"]+)"|\sfor="([^"]+)"/g)].flatMap((match) =>
      (match[1] ?? match[2] ?? match[3] ?? '').split(' '),
    );
    expect(wanted.filter((id) => !ids.includes(id))).toEqual([]);
  });

  test('every outer drawing is either skipped by readers or has a name', () => {
    const drawings = [...markup.matchAll(/<svg\b[^>]*>/g)].map((match) => match[0]);
    expect(drawings.filter((tag) => !/aria-hidden="true"|role="img"/.test(tag))).toEqual([]);
  });

  test('no control is disabled: one that cannot act yet keeps its focus and says why', () => {
    expect(markup).not.toMatch(/\sdisabled=/);
  });

  test('every text input and select has its label', () => {
    const named = [...markup.matchAll(/\sfor="([^"]+)"/g)].map((match) => match[1]);
    const fields = [...markup.matchAll(/<(?:input|select|textarea)\b[^>]*>/g)].map((match) => match[0]);
    const typed = fields.filter((tag) => !/type="(?:radio|checkbox)"/.test(tag));
    expect(typed.filter((tag) => !named.includes(/\sid="([^"]+)"/.exec(tag)?.[1]))).toEqual([]);
  });
});
