// A book made ready for being asked of every variant it could permit. What stocks, pairs and scopes say is looked up by number; what adds
// up is one weight per stock. Compiled once per edition and day.
import { compareText } from '../../base/compare.ts';
import { stockPoints } from '../../chemistry/need.ts';
import { stockContent } from '../../composition/content.ts';
import { colourantsMissing } from '../../law/limits.ts';
import type { Book } from '../../rulebook/book.ts';
import { need } from '../../rulebook/book.ts';
import type { LocalDay } from '../../units/time.ts';
import type { PairRuling } from '../../verdict/pair-verdict.ts';
import { pairRulings } from '../../verdict/pair-verdict.ts';
import type { CompiledOffer } from './compile-offer.ts';
import { compileOffer } from './compile-offer.ts';
import { classExcess, curvedExcesses, lowerEndExcess, pairLimitExcesses, refusingExcesses, upperEndExcess } from './excesses.ts';
import type { Excess, LinearTest } from './linear.ts';
import { alwaysHolds, linearTest, unitJars } from './linear.ts';
import type { Together } from './together.ts';
import { compileTogether } from './together.ts';

/** One end of a pH window. */
export type EndTest = LinearTest | 'never';

/** Speaks as soon as two stocks meet, or a stock meets the base. */
export interface LimitRule {
  readonly tests: readonly LinearTest[];
  readonly lower: EndTest | null;
  readonly upper: EndTest | null;
}

/** Refuses where every side is over and the pH may lie outside. */
export interface RefusingRule {
  readonly sides: readonly LinearTest[];
  readonly lower: EndTest | null;
  readonly upper: EndTest | null;
}

export interface CompiledBook extends CompiledOffer, Together {
  readonly book: Book;
  readonly day: LocalDay;
  readonly mostActivesCount: number;
  readonly allowancePpm: number;
  /** False: the base alone is refused, whatever is added. */
  readonly baseStands: boolean;
  /** Stocks that no permitted jar holds. */
  readonly barred: Uint8Array;
  /** 1 where two stocks may not stand in one jar; row × column. */
  readonly clash: Uint8Array;
  /** Limit rules that wake when two stocks meet (diagonal: when the stock is there at all); row × column. */
  readonly limitRules: readonly (readonly LimitRule[] | null)[];
  readonly refusing: readonly LinearTest[];
  readonly curved: readonly LinearTest[];
  readonly classRules: readonly RefusingRule[];
  /** Ends of the windows that stand over a plan, by stock, in hundredths; the base's own beside them. */
  readonly lowestX100: Int32Array;
  readonly highestX100: Int32Array;
  readonly baseWindow: { readonly minX100: number; readonly maxX100: number };
  readonly lowerEnds: ReadonlyMap<number, EndTest>;
  readonly upperEnds: ReadonlyMap<number, EndTest>;
  /** Ends that every jar must hold: where the preservatives were proven. */
  readonly alwaysEnds: readonly EndTest[];
}

export function compileBook(book: Book, day: LocalDay): CompiledBook {
  const { base } = book.rulebook;
  const stockIds = book.rulebook.stocks.map((stock) => stock.id).sort(compareText);
  const barred = Uint8Array.from(stockIds, (id) => (isBarred(book, id, day) ? 1 : 0));
  const units = unitJars(book, stockIds);
  const test = (excess: Excess): LinearTest => linearTest(units, excess, { mostPpm: base.allowancePpm, skips: barred });
  const live = (excesses: readonly Excess[]): readonly LinearTest[] =>
    excesses.map(test).filter((one) => !alwaysHolds(one, base.allowancePpm));
  const ends = endTests(book, test);
  const rule = (ruling: PairRuling): LimitRule => ({
    tests: live(pairLimitExcesses(ruling.firstMaterialId, ruling.secondMaterialId, ruling.limit ?? {})),
    lower: ruling.limit?.minPhX100 === undefined ? null : ends.lower(ruling.limit.minPhX100),
    upper: ruling.limit?.maxPhX100 === undefined ? null : ends.upper(ruling.limit.maxPhX100),
  });
  const meetings = compileMeetings(book, stockIds, rule);
  const windows = stockIds.map((id) => windowOver(book, id));
  const offer = compileOffer(book, stockIds);
  return {
    ...offer,
    ...meetings,
    ...compileTogether({ ...offer, ...meetings, barred }, offer.shades, offer.choices),
    book,
    day,
    mostActivesCount: base.mostActivesCount,
    allowancePpm: base.allowancePpm,
    baseStands: baseStands(book, day) && meetings.baseStands,
    barred,
    refusing: live(refusingExcesses(book, day)),
    curved: live(curvedExcesses(book)),
    classRules: book.rulebook.classRules.flatMap(({ then, first, second, unlessPhWithin }): RefusingRule[] => {
      const sides = [first, ...(second ? [second] : [])].map((side) => test(classExcess(book, side.materialClass, side.abovePpm)));
      if (then.kind !== 'refuse' || sides.some((side) => alwaysHolds(side, base.allowancePpm))) return [];
      return [
        {
          sides,
          lower: unlessPhWithin ? ends.lower(unlessPhWithin.minPhX100) : null,
          upper: unlessPhWithin ? ends.upper(unlessPhWithin.maxPhX100) : null,
        },
      ];
    }),
    lowestX100: Int32Array.from(windows, ({ minX100 }) => minX100),
    highestX100: Int32Array.from(windows, ({ maxX100 }) => maxX100),
    baseWindow: { minX100: base.ph.minPhX100, maxX100: base.ph.maxPhX100 },
    lowerEnds: new Map([base.ph.minPhX100, ...windows.map(({ minX100 }) => minX100)].map((at) => [at, ends.lower(at)])),
    upperEnds: new Map([base.ph.maxPhX100, ...windows.map(({ maxX100 }) => maxX100)].map((at) => [at, ends.upper(at)])),
    alwaysEnds: base.preservation.preservatives.flatMap(({ ph }) => [ends.lower(ph.minPhX100), ends.upper(ph.maxPhX100)]),
  };
}

interface Ends {
  readonly lower: (minX100: number) => EndTest;
  readonly upper: (maxX100: number) => EndTest;
}

/** Each end is compiled once, whoever asks for it. */
function endTests(book: Book, test: (excess: Excess) => LinearTest): Ends {
  const once = (make: (atX100: number) => Excess | 'never') => {
    const made = new Map<number, EndTest>();
    return (atX100: number): EndTest => {
      const known = made.get(atX100);
      if (known !== undefined) return known;
      const excess = make(atX100);
      const end = excess === 'never' ? excess : test(excess);
      made.set(atX100, end);
      return end;
    };
  };
  return { lower: once((at) => lowerEndExcess(book, at)), upper: once((at) => upperEndExcess(book, at)) };
}

const materialIds = (book: Book, stockId: string): readonly string[] => [...stockContent(book, stockId).materials.keys()];

/** No need table, a colour that a market does not permit, or no figure where exposure is demanded. */
function isBarred(book: Book, stockId: string, day: LocalDay): boolean {
  const content = stockContent(book, stockId);
  return (
    stockPoints(book, stockId) === null ||
    colourantsMissing(book, content.materials.keys(), day).length > 0 ||
    [...content.substances.keys()].some((id) => hasNoFigure(book, id))
  );
}

function baseStands(book: Book, day: LocalDay): boolean {
  const { parts } = book.rulebook.base;
  return (
    colourantsMissing(book, book.baseMaterialIds, day).length === 0 &&
    !parts.some(({ materialId }) => need(book.materials, materialId).substances.some(({ substanceId }) => hasNoFigure(book, substanceId)))
  );
}

function hasNoFigure(book: Book, substanceId: string): boolean {
  const { exposure, exposureDemanded } = need(book.substances, substanceId);
  return exposureDemanded && !exposure;
}

/** The narrowest window over the materials of a stock. */
function windowOver(book: Book, stockId: string): { readonly minX100: number; readonly maxX100: number } {
  const windows = materialIds(book, stockId).flatMap((id) => {
    const { phFresh, phShelf } = need(book.materials, id);
    return [phFresh, phShelf].filter((window) => window !== undefined);
  });
  const { ph } = book.rulebook.base;
  return {
    minX100: Math.max(ph.minPhX100, ...windows.map((window) => window.minPhX100)),
    maxX100: Math.min(ph.maxPhX100, ...windows.map((window) => window.maxPhX100)),
  };
}

type Meetings = Pick<CompiledBook, 'clash' | 'limitRules' | 'baseStands'>;

function compileMeetings(book: Book, stockIds: readonly string[], rule: (ruling: PairRuling) => LimitRule): Meetings {
  const held = stockIds.map((id) => materialIds(book, id));
  const base = [...book.baseMaterialIds];
  const meeting = makeMeeting(book, rule);
  const cells = held.flatMap((mine, row) =>
    held.map((theirs, column) => {
      if (row !== column) return meeting(mine, theirs, true);
      // A stock meets itself and the base as soon as it is there.
      const own = meeting(mine, mine, true);
      const withBase = meeting(mine, base, true);
      return { isClash: own.isClash || withBase.isClash, rules: [...own.rules, ...withBase.rules] };
    }),
  );
  const alone = meeting(base, base, false);
  return {
    clash: Uint8Array.from(cells, ({ isClash }) => (isClash ? 1 : 0)),
    // A limit inside the base stands over every jar, so it wakes with every stock.
    limitRules: cells.map(({ rules }, index) => {
      const isDiagonal = index % (stockIds.length + 1) === 0;
      const all = isDiagonal ? [...new Set([...rules, ...alone.rules])] : rules;
      return all.length > 0 ? all : null;
    }),
    baseStands: !alone.isClash,
  };
}

interface Meeting {
  readonly isClash: boolean;
  readonly rules: readonly LimitRule[];
}

function makeMeeting(
  book: Book,
  rule: (ruling: PairRuling) => LimitRule,
): (mine: readonly string[], theirs: readonly string[], isAdded: boolean) => Meeting {
  const made = new Map<string, Meeting>();
  const ofPair = (a: string, b: string, isAdded: boolean): Meeting => {
    const key = `${a < b ? `${a}|${b}` : `${b}|${a}`}|${isAdded}`;
    const known = made.get(key);
    if (known) return known;
    const rulings = pairRulings(book, a, b, isAdded);
    const limits = rulings === 'judged-with-the-base' ? [] : rulings.filter((ruling) => ruling.verdict === 'limit').map(rule);
    const found: Meeting = {
      isClash: rulings !== 'judged-with-the-base' && (rulings.length === 0 || rulings.some((ruling) => ruling.verdict === 'never')),
      rules: limits.filter(({ tests, lower, upper }) => tests.length > 0 || lower !== null || upper !== null),
    };
    made.set(key, found);
    return found;
  };
  return (mine, theirs, isAdded) => {
    const all = mine.flatMap((a) => theirs.filter((b) => a !== b).map((b) => ofPair(a, b, isAdded)));
    return { isClash: all.some(({ isClash }) => isClash), rules: [...new Set(all.flatMap(({ rules }) => rules))] };
  };
}
