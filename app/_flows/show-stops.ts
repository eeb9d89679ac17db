// Every stop with the name of what it stops, and what can be stopped: for the office.
import type { Reading } from '#db/connection.ts';
import { findLot, listStandingLots } from '#db/lots.ts';
import { listAccounts } from '#db/people.ts';
import type { StopView } from '#db/stops.ts';
import { listStops } from '#db/stops.ts';
import { assertNever } from '#lib/base/invariant.ts';
import type { Book } from '#lib/rulebook/book.ts';
import { editionInForce } from './edition-in-force.ts';
import type { Flow } from './flow.ts';

export interface Named {
  readonly id: string;
  readonly name: string;
}

export interface StopRow extends StopView {
  /** What is stopped, in words. */
  readonly subject: string;
  readonly by: string;
  readonly liftedBy: readonly string[];
}

export interface StopsView {
  /** In force first, then lifted ones; newest first. */
  readonly rows: readonly StopRow[];
  /** By kind of subject; empty before the first edition. */
  readonly subjects: Readonly<Record<'shade' | 'active' | 'material' | 'stock' | 'lot', readonly Named[]>>;
}

export function showStops(flow: Flow): StopsView {
  return flow.db.read((tx) => {
    const book = editionInForce(tx, flow)?.book ?? null;
    const people = new Map(listAccounts(tx).map((account) => [account.id, account.name]));
    const person = (id: string): string => people.get(id) ?? id;
    const rows = listStops(tx).map((view) => ({
      ...view,
      subject: subjectName(tx, book, view.stop),
      by: person(view.stop.byAccountId),
      liftedBy: view.lifted ? [person(view.lifted.firstAccountId), person(view.lifted.secondAccountId)] : [],
    }));
    return {
      rows: [...rows.filter((row) => !row.lifted), ...rows.filter((row) => row.lifted)],
      subjects: {
        shade: named(book?.rulebook.shades),
        active: named(book?.rulebook.actives),
        material: named(book?.rulebook.materials),
        stock: named(book?.rulebook.stocks),
        lot: listStandingLots(tx).map(({ lot }) => ({ id: lot.id, name: lot.code })),
      },
    };
  });
}

type Nameable = { readonly id: string; readonly code: string; readonly name: { readonly en?: string } };

const named = (things: readonly Nameable[] = []): readonly Named[] =>
  things.map(({ id, code, name }) => ({ id, name: name.en ?? code })).sort((a, b) => (a.name < b.name ? -1 : 1));

/** The id itself for what the edition in force no longer knows. */
function subjectName(tx: Reading, book: Book | null, { subjectKind, subjectId }: StopView['stop']): string {
  const nameIn = (map: ReadonlyMap<string, Nameable> | undefined, id: string): string => map?.get(id)?.name.en ?? id;
  switch (subjectKind) {
    case 'lot':
      return findLot(tx, subjectId)?.lot.code ?? subjectId;
    case 'pair':
      return subjectId
        .split('|')
        .map((id) => nameIn(book?.materials, id))
        .join(' + ');
    case 'variant': {
      const [shadeId = '', chosen = ''] = subjectId.split('|');
      const actives = chosen === '' ? [] : chosen.split('+').map((one) => nameIn(book?.actives, one.split('@', 1)[0] ?? ''));
      return [nameIn(book?.shades, shadeId), ...actives].join(', ');
    }
    case 'material':
      return nameIn(book?.materials, subjectId);
    case 'stock':
      return nameIn(book?.stocks, subjectId);
    case 'shade':
      return nameIn(book?.shades, subjectId);
    case 'active':
      return nameIn(book?.actives, subjectId);
    default:
      return assertNever(subjectKind);
  }
}
