// Why an edition could not be published, in sentences: every open point at once, each saying what to do.
import { assertNever } from '#lib/base/invariant.ts';
import type { PublishOutput } from '#lib/contracts/publish.ts';
import { localDay } from '#lib/units/time.ts';
import type { OfficeText } from '../office-text.ts';
import type { ToldChange } from './tell-changes.ts';

type Refusal = Extract<PublishOutput, { ok: false }>['refusal'];
type GateClosed = Extract<Refusal, { kind: 'gate-closed' }>;

export interface Outcome {
  readonly tone: 'ok' | 'stop';
  readonly title: string;
  readonly more: readonly string[];
}

export const stopped = (title: string, more: readonly string[] = []): Outcome => ({ tone: 'stop', title, more });

export function refusalText(refusal: Refusal, text: OfficeText, changes: readonly ToldChange[]): Outcome {
  const { t } = text;
  switch (refusal.kind) {
    case 'gate-closed': {
      const [first = t('refusal-not-counted'), ...rest] = refusal.open.map((point) => openText(point, text, changes));
      return stopped(first, [...rest, ...refusal.notices.map((notice) => noticeText(notice, text))]);
    }
    case 'already-published':
      return stopped(t('refusal-already-published', { no: refusal.editionNo }));
    case 'no-draft':
    case 'wrong-password':
    case 'locked':
    case 'draft-moved':
    case 'not-counted':
    case 'effective-in-the-past':
      return stopped(t(`refusal-${refusal.kind}`));
    default:
      return assertNever(refusal);
  }
}

function openText(point: GateClosed['open'][number], { t }: OfficeText, changes: readonly ToldChange[]): string {
  switch (point.kind) {
    case 'unsound':
      return t('open-unsound', { count: point.faultsCount });
    case 'not-looked-at':
      return t('open-not-looked-at', { count: unseenCount(changes, point.keys) });
    case 'no-reason':
      return t('open-no-reason', { count: point.leastWordsCount });
    case 'restricted-without-row':
      return point.rows.map(({ name, marketId, source }) => t('open-restricted-without-row', { name, market: marketId, source })).join(' ');
    case 'nothing-changed':
    case 'own-work':
    case 'no-market':
    case 'nothing-permitted':
      return t(`open-${point.kind}`);
    default:
      return assertNever(point);
  }
}

/** Several places of one row are one entry of the list; a place that the list does not show counts for itself. */
function unseenCount(changes: readonly ToldChange[], keys: readonly string[]): number {
  const shown = changes.filter((change) => change.lookKeys.some((key) => keys.includes(key)));
  return shown.length + keys.filter((key) => !shown.some((change) => change.lookKeys.includes(key))).length;
}

function noticeText(notice: GateClosed['notices'][number], { t, day }: OfficeText): string {
  switch (notice.kind) {
    case 'market-left-out':
      return t('notice-market-left-out', { market: notice.marketId, missing: notice.missing.join(', ') });
    case 'limit-ahead':
      return t('notice-limit-ahead', { limit: notice.limitId, day: day(localDay(notice.fromDay)) });
    case 'replaces-edition':
      return t('notice-replaces-edition', { no: notice.editionNo });
    default:
      return assertNever(notice);
  }
}
