// A complaint stands against one jar of this shop, with what was done about it; what was said never reaches the ledger. Invented words.
import { describe, expect, test } from 'vitest';
import { fileComplaint, recordComplaintStep } from '#app/_flows/file-complaint.ts';
import { showComplaints } from '#app/_flows/show-complaints.ts';
import { listLedger } from '#db/ledger.ts';
import { checkCharacter } from '#lib/label/batch-code.ts';
import { benchOrder, mixUntil, orderJar } from '#test/support/a-bench-order.ts';
import type { AShop } from '#test/support/a-shop.ts';
import { aShop, took } from '#test/support/a-shop.ts';
import { idOf } from '#test/support/shop-facts.ts';

const SAID = { kind: 'smell', seriousness: 'not-serious', said: 'It smells of wet stone', contact: 'box 7' } as const;

function shopWithJar(): { readonly shop: AShop; readonly jarCode: string } {
  const shop = aShop();
  const orderId = mixUntil(shop, orderJar(shop), 'release');
  return { shop, jarCode: benchOrder(shop, orderId).view.jar?.batchCode ?? '' };
}

const ledgerOf = ({ db }: AShop) => db.read((tx) => listLedger(tx, 0, 10_000));

describe('a complaint', () => {
  test('is written down against its jar, however the code was typed, and shown with the name of the mask', () => {
    const { shop, jarCode } = shopWithJar();
    const typed = ` ${jarCode.slice(0, 2).toLowerCase()}-${jarCode.slice(2)} `;
    const { complaintId } = took(fileComplaint(shop.as('manager'), { ...SAID, jarCode: typed }));
    const [row, ...others] = showComplaints(shop.as('manager'));
    expect(others).toEqual([]);
    expect(row).toMatchObject({ said: SAID.said, contact: SAID.contact, maskName: expect.stringContaining('Fern Bank'), steps: [] });
    expect(row?.complaint).toMatchObject({ id: complaintId, jarCode, kind: 'smell', seriousness: 'not-serious' });
  });

  test('leaves what was said, and by whom, out of the ledger', () => {
    const { shop, jarCode } = shopWithJar();
    const { complaintId } = took(fileComplaint(shop.as('manager'), { ...SAID, jarCode }));
    const fact = ledgerOf(shop).at(-1);
    expect(fact?.row.kind).toBe('complaint-filed');
    expect(JSON.parse(fact?.body ?? '')).toEqual({ complaintId, jarCode, kind: 'smell', seriousness: 'not-serious' });
  });

  test('is refused for what is no code, and for the code of no jar of this shop', () => {
    const { shop, jarCode } = shopWithJar();
    const before = ledgerOf(shop).length;
    const body = `${jarCode.slice(0, 7)}9999`;
    const file = (code: string) => fileComplaint(shop.as('manager'), { ...SAID, jarCode: code });
    expect(file('lid')).toEqual({ ok: false, refusal: { kind: 'no-jar-code' } });
    expect(file(`${body}${checkCharacter(body)}`)).toEqual({ ok: false, refusal: { kind: 'no-such-jar' } });
    expect(ledgerOf(shop).length).toBe(before);
  });
});

describe('what was done about it', () => {
  test('is added in order, with who did it', () => {
    const { shop, jarCode } = shopWithJar();
    const { complaintId } = took(fileComplaint(shop.as('manager'), { ...SAID, jarCode }));
    took(recordComplaintStep(shop.as('formulator', 5), { complaintId, kind: 'sample-kept', note: 'Kept cold' }));
    took(recordComplaintStep(shop.as('manager', 9), { complaintId, kind: 'closed', note: '' }));
    const [row] = showComplaints(shop.as('manager'));
    expect(row?.steps.map(({ kind, note, by }) => [kind, note, by])).toEqual([
      ['sample-kept', 'Kept cold', 'formulator'],
      ['closed', '', 'manager'],
    ]);
    expect(ledgerOf(shop).at(-1)?.row.kind).toBe('complaint-closed');
  });

  test('is refused where nobody complained', () => {
    const { shop } = shopWithJar();
    expect(recordComplaintStep(shop.as('manager'), { complaintId: idOf(7), kind: 'closed', note: '' })).toEqual({
      ok: false,
      refusal: { kind: 'no-such-complaint' },
    });
  });
});
