// The code on card and label: a Data Matrix as one path.
import { expect, test } from 'vitest';
import { dataMatrixPath } from '#app/_print/data-matrix.tsx';

/** The dark modules of path data made of bars one module high. */
function modulesOf(path: string, size: number): boolean[][] {
  const grid = Array.from({ length: size }, () => Array<boolean>(size).fill(false));
  for (const [, x, y, length] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\3z/g)) {
    for (let at = 0; at < Number(length); at += 1) (grid[Number(y)] ?? [])[Number(x) + at] = true;
  }
  return grid;
}

test('six digits make a symbol of 10 × 10 with the finder and clock tracks of ISO/IEC 16022', () => {
  const { path, modulesCount } = dataMatrixPath('datamatrix', '123456');
  expect(modulesCount).toBe(10);
  const grid = modulesOf(path, modulesCount);
  const column = (x: number): boolean[] => grid.map((row) => row[x] ?? false);
  // Solid at the left and the bottom; light and dark in turn at the top and the right.
  expect(column(0).every(Boolean)).toBe(true);
  expect(grid[9]?.every(Boolean)).toBe(true);
  expect(grid[0]).toEqual(Array.from({ length: 10 }, (_, x) => x % 2 === 0));
  expect(column(9)).toEqual(Array.from({ length: 10 }, (_, y) => y % 2 === 1));
});

test('every part of the path is a bar, and the same text makes the same path', () => {
  const { path } = dataMatrixPath('gs1datamatrix', '(17)270130(10)ML263290017Y');
  expect(path.replaceAll(/M\d+ \d+h\d+v1h-\d+z/g, '')).toBe('');
  expect(dataMatrixPath('gs1datamatrix', '(17)270130(10)ML263290017Y').path).toBe(path);
  expect(dataMatrixPath('gs1datamatrix', '(17)270130(10)ML263290018Y').path).not.toBe(path);
});
