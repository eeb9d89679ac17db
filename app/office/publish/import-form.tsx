'use client';
import type { FormEvent, ReactNode } from 'react';
import { useState } from 'react';
import { importDraft } from '#app/_client/office.ts';
import { Button } from '#app/_ui/controls/button.tsx';
import { TextField } from '#app/_ui/controls/field.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import { SectionHead } from '#app/_ui/controls/section-head.tsx';
import styles from '../office.module.css';
import { officeText } from '../office-text.ts';
import publishStyles from './publish.module.css';

/** A rulebook with hundreds of faults is not mended line by line on this page. */
const SHOWN_FAULTS_COUNT = 20;

interface Stopped {
  readonly title: string;
  readonly more: readonly string[];
}

/** @param parentRevisionNo of the draft that is looked at; null where there is none */
export function ImportForm({ parentRevisionNo }: { readonly parentRevisionNo: number | null }): ReactNode {
  const { t } = officeText();
  const [stopped, setStopped] = useState<Stopped | null>(null);
  const stop = (title: string, more: readonly string[] = []): void => setStopped({ title, more });

  const submit = async (event: FormEvent<HTMLFormElement>): Promise<void> => {
    event.preventDefault();
    const file = new FormData(event.currentTarget).get('rulebook');
    if (!(file instanceof File) || file.size === 0) return stop(t('import-no-file'));
    const read = jsonOf(await file.text());
    if (!read.ok) return stop(t('import-not-json', { detail: read.says }));
    const reply = await importDraft({ parentRevisionNo, document: read.json });
    if (reply.kind === 'unreachable') return stop(t('unreachable'));
    if (reply.kind === 'problem') {
      const { title, detail, fields } = reply.problem;
      return stop(
        t('problem', { title, detail }),
        fields.map((field) => field.message),
      );
    }
    if (reply.body.ok) return window.location.assign(`/office/publish?saved=${reply.body.revisionNo}`);
    const { refusal } = reply.body;
    if (refusal.kind === 'draft-moved') return stop(t('refusal-draft-moved'));
    const shown = refusal.faults.slice(0, SHOWN_FAULTS_COUNT).map(({ place, message }) => `${place}: ${message}`);
    const hiddenCount = refusal.faults.length - shown.length;
    stop(
      t('import-unsound', { count: refusal.faults.length }),
      hiddenCount > 0 ? [...shown, t('import-more', { count: hiddenCount })] : shown,
    );
  };

  return (
    <section className={styles.section} aria-labelledby="import">
      <SectionHead id="import" title={t('import-title')} />
      <form className={styles.form} onSubmit={(event) => void submit(event)} noValidate>
        <div role="alert">
          {stopped && (
            <Notice tone="stop" title={stopped.title}>
              {stopped.more.length > 0 && (
                <ul>
                  {stopped.more.map((line) => (
                    <li key={line}>{line}</li>
                  ))}
                </ul>
              )}
            </Notice>
          )}
        </div>
        <TextField
          id="rulebook"
          name="rulebook"
          type="file"
          className={publishStyles.file}
          accept="application/json,.json"
          label={t('import-file')}
          hint={t('import-file-hint')}
        />
        <div className={styles.actions}>
          <Button type="submit">{t('import-now')}</Button>
        </div>
      </form>
    </section>
  );
}

type Read = { readonly ok: true; readonly json: JsonValue } | { readonly ok: false; readonly says: string };
type JsonValue = Parameters<typeof importDraft>[0]['document'];

function jsonOf(text: string): Read {
  try {
    return { ok: true, json: JSON.parse(text) };
  } catch (error) {
    if (error instanceof SyntaxError) return { ok: false, says: error.message };
    throw error;
  }
}
