// The impossible cannot be stored: lots and orders.
import { describe } from 'vitest';
import type { Writing } from '#db/connection.ts';
import { insertJar } from '#db/jars.ts';
import { insertLot, insertLotEvent, insertLotUse } from '#db/lots.ts';
import { endOrderClaim, findOrder, insertOrderClaim, insertOrderEnd, insertOrderHold, insertOrderLink } from '#db/orders.ts';
import { inserting } from '#db/query.ts';
import { insertRequest } from '#db/requests.ts';
import { insertReservation, listOpenReservations } from '#db/reservations.ts';
import { reservationFreed } from '#db/schema-orders.ts';
import { massDifferenceUg, massUg } from '#lib/units/mass.ts';
import { localDay } from '#lib/units/time.ts';
import { refuses } from '#test/support/refuses.ts';
import {
  BENCH,
  collect,
  DAY,
  idOf,
  KAOLIN_LOT,
  later,
  MANAGER,
  MIXER,
  makeJar,
  placeOrder,
  stampAt,
  T0,
} from '#test/support/shop-facts.ts';

const lotRow = {
  kind: 'stock',
  refId: 'kaolin',
  code: 'NEW',
  receivedAtMs: T0,
  expiryDay: localDay('2027-01-31'),
  costMinor: null,
  measuredPhX100: null,
} as const;
const lot = (tx: Writing, change: object): void =>
  insertLot(tx, {
    ...lotRow,
    id: idOf(98),
    receivedMassUg: massUg(1),
    receivedCount: null,
    supplier: '',
    certificate: {},
    byAccountId: MANAGER,
    ...change,
  });
const lotEvent = (tx: Writing, kind: 'opened' | 'spent' | 'rejected'): void =>
  insertLotEvent(tx, { lotId: KAOLIN_LOT, kind, reason: '', byAccountId: MIXER, atMs: T0 });
const lotUse = (tx: Writing, change: object): void =>
  insertLotUse(tx, {
    id: idOf(97),
    lotId: KAOLIN_LOT,
    kind: 'waste',
    leftMassUg: massDifferenceUg(1),
    leftCount: null,
    reason: '',
    jarCode: null,
    byAccountId: MIXER,
    atMs: T0,
    ...change,
  });

describe('lots', () => {
  refuses([
    ['a code twice', /UNIQUE.*lot\.code/, (tx) => lot(tx, { code: 'KA-1' })],
    ['a stock that is counted', /lot_mass_or_count/, (tx) => lot(tx, { receivedMassUg: null, receivedCount: 5 })],
    ['a stock of unknown mass', /lot_mass_or_count/, (tx) => lot(tx, { receivedMassUg: null })],
    ['jars that are weighed', /lot_mass_or_count/, (tx) => lot(tx, { kind: 'jar' })],
    ['jars of unknown count', /lot_mass_or_count/, (tx) => lot(tx, { kind: 'jar', receivedMassUg: null })],
    ['a lot opened twice', /UNIQUE.*lot_event/, (tx) => [lotEvent(tx, 'opened'), lotEvent(tx, 'opened')]],
    ['a lot ended twice', /UNIQUE.*lot_event/, (tx) => [lotEvent(tx, 'spent'), lotEvent(tx, 'rejected')]],
    ['waste that comes back', /lot_use_direction/, (tx) => lotUse(tx, { leftMassUg: massDifferenceUg(-1) })],
    ['a use of mass and count', /lot_use_one_measure/, (tx) => lotUse(tx, { leftCount: 1 })],
    ['a use of nothing', /lot_use_one_measure/, (tx) => lotUse(tx, { leftMassUg: null })],
    [
      'a kind that is not on the list',
      /lot_kind/,
      (tx) =>
        tx.orm.$client.exec(
          "INSERT INTO lot SELECT 'x', 'lid', ref_id, 'y', received_at_ms, expiry_day, received_mass_ug, received_count, cost_minor, measured_ph_x_100, supplier, certificate, by_account_id FROM lot LIMIT 1",
        ),
    ],
    [
      'a mass that is a text',
      /cannot store TEXT value in INTEGER column/,
      (tx) =>
        tx.orm.$client.exec(
          "INSERT INTO lot SELECT 'x', kind, ref_id, 'y', received_at_ms, expiry_day, 'a lot', received_count, cost_minor, measured_ph_x_100, supplier, certificate, by_account_id FROM lot LIMIT 1",
        ),
    ],
  ]);
});

const end = (tx: Writing, orderId: string, kind: 'cancelled' | 'lapsed' | 'discarded', byAccountId: string | null = MIXER): void =>
  insertOrderEnd(tx, { orderId, kind, reason: '', byAccountId, ...stampAt(9) });
const claim = (tx: Writing, orderId: string): void =>
  insertOrderClaim(tx, { orderId, byAccountId: MIXER, stationId: BENCH, atMs: later(1) });
const jarRow = {
  batchCode: 'ML263290001X',
  localDay: DAY,
  batchNo: 1,
  tareUg: massUg(42_000_000),
  jarLotId: null,
  stationId: BENCH,
  byAccountId: MIXER,
  boundAtMs: later(3),
} as const;
const giveBack = (tx: Writing, orderId: string): void =>
  endOrderClaim(tx, findOrder(tx, orderId)?.claim ?? null, { byAccountId: MIXER, reason: '', atMs: later(2) });
const hold = (tx: Writing, orderId: string, no: number): void =>
  insertOrderHold(tx, { id: idOf(no), orderId, reason: '', findings: [], byAccountId: null, atMs: T0 });

describe('orders', () => {
  refuses([
    ['a request key twice', /UNIQUE.*request\.key/, (tx, at) => [placeOrder(tx, 1, at.editionHash), placeOrder(tx, 1, at.editionHash)]],
    [
      'a request key of three letters',
      /request_key_length/,
      (tx) => insertRequest(tx, { key: 'abc', sha256: 'a'.repeat(64), outcome: {}, atMs: T0 }),
    ],
    ['an edition that is not there', /FOREIGN KEY/, (tx) => placeOrder(tx, 1, 'c'.repeat(64))],
    [
      'two ends',
      /UNIQUE.*order_end/,
      (tx, at) => {
        const { orderId } = placeOrder(tx, 1, at.editionHash);
        end(tx, orderId, 'cancelled');
        end(tx, orderId, 'lapsed');
      },
    ],
    [
      'two open claims',
      /claimed already/,
      (tx, at) => {
        const { orderId } = placeOrder(tx, 1, at.editionHash);
        claim(tx, orderId);
        claim(tx, orderId);
      },
    ],
    [
      'a claim of an order that ended',
      /the order has ended/,
      (tx, at) => {
        const { orderId } = placeOrder(tx, 1, at.editionHash);
        end(tx, orderId, 'lapsed', null);
        claim(tx, orderId);
      },
    ],
    [
      'a claimed order that lapses',
      /does not lapse/,
      (tx, at) => {
        const { orderId } = placeOrder(tx, 1, at.editionHash);
        claim(tx, orderId);
        end(tx, orderId, 'lapsed', null);
      },
    ],
    [
      'a jar for an order that was given back',
      /only for a claimed, open order/,
      (tx, at) => {
        const { orderId } = placeOrder(tx, 1, at.editionHash);
        claim(tx, orderId);
        giveBack(tx, orderId);
        insertJar(tx, { ...jarRow, orderId });
      },
    ],
    [
      'a claim that ends twice',
      /UNIQUE.*order_claim_end/,
      (tx, at) => {
        const { orderId } = placeOrder(tx, 1, at.editionHash);
        claim(tx, orderId);
        const held = findOrder(tx, orderId)?.claim ?? null;
        const ending = { byAccountId: MIXER, reason: '', atMs: later(2) };
        endOrderClaim(tx, held, ending);
        endOrderClaim(tx, held, ending);
      },
    ],
    [
      'an order that lapses in other hands',
      /does not lapse/,
      (tx, at) => {
        const { orderId } = placeOrder(tx, 1, at.editionHash);
        claim(tx, orderId);
        giveBack(tx, orderId);
        claim(tx, orderId);
        end(tx, orderId, 'lapsed', null);
      },
    ],
    ['a discard by nobody', /order_end_by/, (tx, at) => end(tx, placeOrder(tx, 1, at.editionHash).orderId, 'discarded', null)],
    [
      'a collected order without a jar',
      /only a released jar is collected/,
      (tx, at) => collect(tx, placeOrder(tx, 1, at.editionHash).orderId),
    ],
    [
      'a collected order whose jar is held',
      /only a released jar is collected/,
      (tx, at) => collect(tx, makeJar(tx, 1, at.editionHash, 'held').orderId),
    ],
    [
      'two open holds',
      /held already/,
      (tx, at) => {
        const { orderId } = placeOrder(tx, 1, at.editionHash);
        hold(tx, orderId, 60);
        hold(tx, orderId, 61);
      },
    ],
    [
      'a reservation of nothing',
      /reservation_something/,
      (tx, at) =>
        insertReservation(tx, {
          id: idOf(60),
          orderId: placeOrder(tx, 1, at.editionHash).orderId,
          lotId: KAOLIN_LOT,
          massUg: massUg(0),
          atMs: T0,
        }),
    ],
    [
      'a freed mass that was never reserved',
      /names the lot and mass/,
      (tx, at) => {
        const [reserved] = listOpenReservations(tx, placeOrder(tx, 1, at.editionHash).orderId);
        inserting(reservationFreed)(tx, {
          reservationId: reserved?.id ?? '',
          lotId: KAOLIN_LOT,
          massUg: massUg(1),
          reason: 'used',
          atMs: T0,
        });
      },
    ],
    [
      'a remake of its own jar',
      /cannot follow its own jar/,
      (tx, at) => {
        const { orderId, jarCode } = makeJar(tx, 1, at.editionHash);
        insertOrderLink(tx, { orderId, kind: 'remake', jarCode });
      },
    ],
  ]);
});
