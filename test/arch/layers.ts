// The table of rooms.ts, applied to every file and every import; and walls that no import may climb: lost targets, paths that leave a top folder.
import type { Finding, House } from './house.ts';
import type { Import } from './imports.ts';
import type { Room } from './rooms.ts';
import { isCovered, packageLeave, roomOf } from './rooms.ts';

/** A file that no room holds. */
export const homeless = (house: House): Finding[] =>
  [...house.files.keys()]
    .filter((path) => roomOf(path, house.sources.get(path)) === undefined)
    .map((path) => ({ path, line: 1, says: 'belongs to no room of test/arch/rooms.ts' }));

/** An import that its room's row does not list. */
export function unlisted(house: House): Finding[] {
  return everyImport(house).flatMap((each) => {
    const room = roomOf(each.from, house.sources.get(each.from));
    const says = room === undefined ? undefined : refusal(house, room, each);
    return says === undefined ? [] : [{ path: each.from, line: each.line, says }];
  });
}

function refusal(house: House, room: Room, { target, carries, spec }: Import): string | undefined {
  if (target.kind === 'lost') return undefined;
  if (target.kind === 'package') {
    const leave = packageLeave(room, target.name);
    if (leave === undefined) return `${room.name} may not use the package "${target.name}"`;
    return leave === 'types' && carries === 'code' ? `${room.name} may take types only from "${target.name}" (import type)` : undefined;
  }
  const other = roomOf(target.path, house.sources.get(target.path));
  const leave = other === undefined ? undefined : room.rooms[other.name];
  if (isCovered(leave, target.path, carries === 'code')) return undefined;
  if (leave === undefined) return `${room.name} may not import ${other?.name ?? 'a file without a room'} (${spec})`;
  return isCovered(leave, target.path, false)
    ? `${room.name} may take types only from this file of ${other?.name} (import type; ${spec})`
    : `${room.name} may not import this file of ${other?.name} (${spec})`;
}

/** An import whose target is computed, or is no file of the tree: it would slip past every other rule. */
export const lost = (house: House): Finding[] =>
  everyImport(house).flatMap(({ from, line, target }) => (target.kind === 'lost' ? [{ path: from, line, says: target.why }] : []));

/** A relative path from one top folder into another: between top folders the alias shows the border being crossed. */
export const climbing = (house: House): Finding[] =>
  everyImport(house).flatMap(({ from, line, spec, target, carries }) => {
    const leaves =
      carries !== 'address' && spec.startsWith('.') && target.kind === 'file' && target.path.split('/')[0] !== from.split('/')[0];
    return leaves ? [{ path: from, line, says: `write #${target.path} instead of ${spec}` }] : [];
  });

/** A unit made outside its home: only lib/units may hold the makers of brands. */
export const mintedAbroad = (house: House): Finding[] =>
  everyImport(house).flatMap(({ from, line, target, carries }) => {
    const mints = target.kind === 'file' && target.path === 'lib/units/unit.ts' && carries === 'code' && !from.startsWith('lib/units/');
    return mints ? [{ path: from, line, says: 'only lib/units makes units: add a constructor there' }] : [];
  });

const everyImport = (house: House): Import[] => [...house.imports.values()].flat();
