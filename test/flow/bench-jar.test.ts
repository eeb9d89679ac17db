// A jar from the queue to the customer's hand, through the flows of the bench.
import { describe, expect, test } from 'vitest';
import { collectOrder } from '#app/_flows/collect-order.ts';
import { printLabel } from '#app/_flows/print-label.ts';
import { orderStage } from '#db/orders.ts';
import { findRelease } from '#db/releases.ts';
import { aKey, benchOrder, doStep, FERN_JAR, mixUntil, orderJar } from '#test/support/a-bench-order.ts';
import { aShop, took } from '#test/support/a-shop.ts';

describe('a jar that goes well', () => {
  test('is claimed, mixed, released, labelled and collected', () => {
    const shop = aShop();
    const orderId = mixUntil(shop, orderJar(shop, FERN_JAR), 'release');
    doStep(shop, orderId);
    const { view, stage } = benchOrder(shop, orderId);
    const jarCode = view.jar?.batchCode ?? '';
    expect(stage).toBe('ready');
    const released = shop.db.read((tx) => findRelease(tx, jarCode));
    expect(released).toMatchObject({ outcome: 'released', findings: [] });
    took(printLabel(shop.as('mixer', 9), { requestKey: aKey(), orderId }));
    took(collectOrder(shop.as('mixer', 10), { requestKey: aKey(), orderId, labelCode: jarCode }));
    expect(orderStage(benchOrder(shop, orderId).view)).toBe('collected');
  });
});
