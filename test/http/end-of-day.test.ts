// What the server does by itself while it runs. Invented orders.
import Database from 'better-sqlite3';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { keepDaysEnding } from '#app/_server/end-of-day.ts';
import { configure, shopDbOver } from '#db/connection.ts';
import { findOrder, orderStage } from '#db/orders.ts';
import { orderJar } from '#test/support/a-bench-order.ts';
import type { AShop } from '#test/support/a-shop.ts';
import { aShop } from '#test/support/a-shop.ts';
import { nextEdition } from '#test/support/a-visit.ts';
import { migratedBytes } from '#test/support/shop-db.ts';

const HOUR_MS = 3_600_000;
const newId = (): string => 'fault-1';
const MINUTES_A_DAY = 24 * 60;

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

const stageOf = (shop: AShop, id: string) => shop.db.read((tx) => orderStage(findOrder(tx, id) ?? expect.fail('no such order')));

test('orders lapse at the first hour of the next day, and at the start of a server that stood still over midnight', () => {
  const shop = aShop();
  const orderId = orderJar(shop);
  const clock = { minutes: 60 };
  const stop = keepDaysEnding(() => shop.asNobody(clock.minutes), newId);
  expect(stageOf(shop, orderId)).toBe('placed');
  clock.minutes = MINUTES_A_DAY;
  vi.advanceTimersByTime(HOUR_MS);
  expect(stageOf(shop, orderId)).toBe('lapsed');
  stop();

  const late = aShop();
  const left = orderJar(late);
  keepDaysEnding(() => late.asNobody(MINUTES_A_DAY), newId)();
  expect(stageOf(late, left)).toBe('lapsed');
  expect(vi.getTimerCount()).toBe(0);
});

test('an order meets an edition that waited for its hour within the hour', () => {
  const shop = aShop();
  const orderId = orderJar(shop);
  nextEdition(shop, (book) => ({ ...book, title: 'The next one', scopes: book.scopes.filter((scope) => scope.kind === 'refuse') }), 30);
  const clock = { minutes: 10 };
  const stop = keepDaysEnding(() => shop.asNobody(clock.minutes), newId);
  expect(stageOf(shop, orderId)).toBe('placed');
  clock.minutes = 70;
  vi.advanceTimersByTime(HOUR_MS);
  expect(stageOf(shop, orderId)).toBe('held');
  stop();
});

test('a fault goes to the log and the next hour tries again', () => {
  const shop = aShop();
  const orderId = orderJar(shop);
  const said = vi.spyOn(process.stderr, 'write').mockReturnValue(true);
  const tries = { count: 0 };
  const stop = keepDaysEnding(() => {
    tries.count += 1;
    if (tries.count === 1) throw new Error('the disk is away');
    return shop.asNobody(MINUTES_A_DAY);
  }, newId);
  expect(said).toHaveBeenCalledWith(expect.stringContaining('the disk is away'));
  said.mockRestore();
  vi.advanceTimersByTime(HOUR_MS);
  expect(stageOf(shop, orderId)).toBe('lapsed');
  stop();
});

test('a file in which no shop was founded yet has no day to end, and nothing to complain of', () => {
  const sqlite = new Database(migratedBytes());
  configure(sqlite);
  const db = shopDbOver(sqlite);
  const lines = vi.spyOn(process.stderr, 'write').mockReturnValue(true);
  keepDaysEnding(() => ({ ...aShop().asNobody(), db }), newId)();
  expect(lines).not.toHaveBeenCalled();
  lines.mockRestore();
  sqlite.close();
});
