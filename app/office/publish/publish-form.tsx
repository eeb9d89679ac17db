'use client';
import type { FormEvent, ReactNode } from 'react';
import { useState } from 'react';
import { publish } from '#app/_client/office.ts';
import { Button } from '#app/_ui/controls/button.tsx';
import type { TableRow } from '#app/_ui/controls/data-table.tsx';
import { DataTable } from '#app/_ui/controls/data-table.tsx';
import { TextAreaField, TextField } from '#app/_ui/controls/field.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import { SectionHead } from '#app/_ui/controls/section-head.tsx';
import { assertNever } from '#lib/base/invariant.ts';
import type { PublishOutput } from '#lib/contracts/publish.ts';
import type { DiffLine } from '#lib/edition/diff.ts';
import { localDay } from '#lib/units/time.ts';
import styles from '../office.module.css';
import type { OfficeText } from '../office-text.ts';
import { officeText } from '../office-text.ts';
import { placeInWords, valueInWords } from './change-words.ts';

type Outcome = { readonly tone: 'ok' | 'stop'; readonly title: string; readonly more: readonly string[] } | null;

export function PublishForm(props: {
  readonly revisionNo: number;
  readonly nextNo: number;
  readonly diff: readonly DiffLine[];
  readonly isOwn: boolean;
  readonly isFirst: boolean;
}): ReactNode {
  const { revisionNo, nextNo, diff, isOwn, isFirst } = props;
  const text = officeText();
  const { t } = text;
  const [looked, setLooked] = useState<readonly string[]>([]);
  const [outcome, setOutcome] = useState<Outcome>(null);
  const toggle = (key: string): void => setLooked((seen) => (seen.includes(key) ? seen.filter((one) => one !== key) : [...seen, key]));

  const submit = async (event: FormEvent<HTMLFormElement>): Promise<void> => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    const reply = await publish({
      revisionNo,
      lookedAt: [...looked],
      reason: String(form.get('reason')),
      effectiveAtMs: null,
      password: String(form.get('password')),
    });
    if (reply.kind === 'unreachable') return setOutcome({ tone: 'stop', title: t('unreachable'), more: [] });
    if (reply.kind === 'problem')
      return setOutcome({
        tone: 'stop',
        title: t('problem', { title: reply.problem.title, detail: reply.problem.detail }),
        more: reply.problem.fields.map((field) => field.message),
      });
    if (!reply.body.ok) return setOutcome(refusalText(reply.body.refusal, text));
    setOutcome({ tone: 'ok', title: t('publish-done', { no: reply.body.editionNo }), more: [] });
    window.location.assign('/office/editions');
  };

  return (
    <>
      {isFirst ? (
        <Notice tone="plain" title={t('publish-first')} />
      ) : (
        <section className={styles.section}>
          <DataTable
            caption={t('diff-caption')}
            showCaption
            columns={[
              { id: 'place', head: t('col-place') },
              { id: 'effect', head: t('col-effect') },
              { id: 'before', head: t('col-before') },
              { id: 'after', head: t('col-after') },
              { id: 'looked', head: t('col-looked') },
            ]}
            rows={diff.map((line) => diffRow(line, text, looked.includes(line.key), toggle))}
          />
        </section>
      )}
      <section className={styles.section} aria-labelledby="sign">
        <SectionHead id="sign" title={t('publish-sign')} />
        {isOwn ? (
          <Notice tone="care" title={t('publish-own')} />
        ) : (
          <form className={styles.form} onSubmit={(event) => void submit(event)} noValidate>
            <p>{t('publish-meaning')}</p>
            <div role="alert">
              {outcome && (
                <Notice tone={outcome.tone} title={outcome.title}>
                  {outcome.more.length > 0 && (
                    <ul>
                      {outcome.more.map((line) => (
                        <li key={line}>{line}</li>
                      ))}
                    </ul>
                  )}
                </Notice>
              )}
            </div>
            <TextAreaField id="reason" name="reason" label={t('publish-reason')} hint={t('publish-reason-hint')} />
            <TextField
              id="password"
              name="password"
              type="password"
              label={t('publish-password')}
              autoComplete="current-password"
              width="short"
            />
            <div className={styles.actions}>
              <Button kind="primary" type="submit">
                {t('publish-now', { no: nextNo })}
              </Button>
            </div>
          </form>
        )}
      </section>
    </>
  );
}

function diffRow(line: DiffLine, text: OfficeText, isLooked: boolean, toggle: (key: string) => void): TableRow {
  const { t } = text;
  return {
    id: line.key,
    look: line.effect === 'widens' ? 'care' : 'plain',
    cells: [
      placeInWords(line.key),
      t(`effect-${line.effect}`),
      line.before === null ? (
        t(line.kind === 'added' ? 'diff-added' : 'none')
      ) : (
        <del key="before" className={styles.was}>
          {valueInWords(line.field, line.before, text)}
        </del>
      ),
      line.after === null ? (
        t(line.kind === 'removed' ? 'diff-removed' : 'none')
      ) : (
        <ins key="after" className={styles.now}>
          {valueInWords(line.field, line.after, text)}
        </ins>
      ),
      line.effect === 'widens' ? (
        <label key="looked" className={styles.look}>
          <input type="checkbox" checked={isLooked} onChange={() => toggle(line.key)} />
          {t('diff-look')}
        </label>
      ) : (
        t('none')
      ),
    ],
  };
}

type Refusal = Extract<PublishOutput, { ok: false }>['refusal'];

function refusalText(refusal: Refusal, { t, day }: OfficeText): Outcome {
  if (refusal.kind !== 'gate-closed') return { tone: 'stop', title: t(`refusal-${refusal.kind}`), more: [] };
  const open = refusal.open.map((point) => {
    switch (point.kind) {
      case 'unsound':
        return t('open-unsound', { count: point.faultsCount });
      case 'not-looked-at':
        return t('open-not-looked-at', { count: point.keys.length });
      case 'no-reason':
        return t('open-no-reason', { count: point.leastWordsCount });
      case 'nothing-changed':
      case 'own-work':
      case 'no-market':
      case 'nothing-permitted':
        return t(`open-${point.kind}`);
      default:
        return assertNever(point);
    }
  });
  const notices = refusal.notices.map((notice) =>
    notice.kind === 'market-left-out'
      ? t('notice-market-left-out', { market: notice.marketId, missing: notice.missing.join(', ') })
      : t('notice-limit-ahead', { limit: notice.limitId, day: day(localDay(notice.fromDay)) }),
  );
  const [first = t('refusal-not-counted'), ...rest] = open;
  return { tone: 'stop', title: first, more: [...rest, ...notices] };
}
