'use client';
// The day's checks of scale and pH meter: what they show for what they should show. The shop decides whether they pass.
import type { FormEvent, ReactNode } from 'react';
import { useState } from 'react';
import { checkFitness } from '#app/_client/bench-acts.ts';
import { newRequestKey } from '#app/_client/request-key.ts';
import { Button } from '#app/_ui/controls/button.tsx';
import { TextField } from '#app/_ui/controls/field.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import { StateWord } from '#app/_ui/marks/state-mark.tsx';
import { gramsRefusalText } from '#app/_ui/text/grams-refusal-text.ts';
import { parseGrams } from '#app/_ui/text/parse-grams.ts';
import type { FitnessInput } from '#lib/contracts/bench-acts.ts';
import type { BenchDoing } from '#lib/contracts/bench-view.ts';
import { massUg } from '#lib/units/mass.ts';
import styles from './bench.module.css';
import { benchText } from './bench-text.ts';
import { hundredthsOf } from './read-decimal.ts';
import { refusalWords } from './refusal-words.ts';
import { problemWords } from './reply-words.tsx';

type Fitness = Extract<BenchDoing, { kind: 'fitness' }>;
type Mistakes = Readonly<Record<string, string>>;

/** The scale first; the meter when it is fit. */
export function FitnessForms({
  doing,
  onChecked,
}: {
  readonly doing: Pick<Fitness, 'scales' | 'meter'>;
  readonly onChecked: () => void;
}): ReactNode {
  return (
    <div className={styles.stack}>
      {doing.scales.map((scale) => (
        <ScaleForm key={scale.id} scale={scale} onChecked={onChecked} />
      ))}
      {doing.meter && doing.scales.every((scale) => scale.isFit) && <MeterForm meter={doing.meter} onChecked={onChecked} />}
    </div>
  );
}

/** Sends one check; what is wrong with it comes back in words. */
async function keep(check: FitnessInput['check'], badKey: 'fitness-bad' | 'meter-bad'): Promise<string | null> {
  const { t } = benchText();
  const reply = await checkFitness({ requestKey: newRequestKey(), check });
  if (reply.kind === 'unreachable') return t('unreachable');
  if (reply.kind === 'problem') return problemWords(reply.problem);
  if (!reply.body.ok) return refusalWords(reply.body.refusal);
  return reply.body.hasPassed ? null : t(badKey);
}

function ScaleForm({ scale, onChecked }: { readonly scale: Fitness['scales'][number]; readonly onChecked: () => void }): ReactNode {
  const { t, target, decimalSign } = benchText();
  const [mistakes, setMistakes] = useState<Mistakes>({});
  const [note, setNote] = useState<string | null>(null);
  const names = ['zero', ...scale.weightsUg.map((_, index) => `weight-${index}`)];
  const reach = { decimalSign, stepUg: massUg(scale.stepUg), capacityUg: massUg(scale.capacityUg) };
  const submit = async (event: FormEvent<HTMLFormElement>): Promise<void> => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    const typed = names.map((name) => {
      const text = String(form.get(name)).trim();
      // Only the empty scale may show less than nothing.
      const isBelow = name === 'zero' && /^[-−]/.test(text);
      return { name, sign: isBelow ? -1 : 1, read: parseGrams(isBelow ? text.slice(1) : text, reach) };
    });
    const wrong = typed.flatMap(({ name, read }) =>
      read.ok ? [] : [[name, gramsRefusalText(read.refusal, 'en', { massUg: reach.stepUg, stepUg: reach.stepUg })] as const],
    );
    setMistakes(Object.fromEntries(wrong));
    if (wrong.length > 0) return;
    const [zeroUg = 0, ...shownUg] = typed.map(({ sign, read }) => (read.ok ? sign * read.value : 0));
    const told = await keep({ kind: 'scale', scaleId: scale.id, zeroUg, shownUg }, 'fitness-bad');
    setNote(told);
    onChecked();
  };
  if (scale.isFit) return <StateWord tone="ok">{t('fitness-ok', { code: scale.code })}</StateWord>;
  return (
    <form className={styles.stack} onSubmit={(event) => void submit(event)} noValidate>
      <p>{t('fitness-note')}</p>
      <div className={styles.three}>
        {names.map((name, index) => (
          <TextField
            key={name}
            id={`${scale.id}-${name}`}
            name={name}
            label={
              name === 'zero'
                ? t('fitness-zero', { code: scale.code })
                : t('fitness-weight', { mass: target(massUg(scale.weightsUg[index - 1] ?? 0)) })
            }
            error={mistakes[name]}
            inputMode="decimal"
            autoComplete="off"
            unit="g"
            align="end"
            dir="ltr"
          />
        ))}
      </div>
      <Button kind="primary" type="submit">
        {t('fitness-save')}
      </Button>
      <div role="alert">{note !== null && <Notice tone="stop" title={note} />}</div>
    </form>
  );
}

function MeterForm({ meter, onChecked }: { readonly meter: NonNullable<Fitness['meter']>; readonly onChecked: () => void }): ReactNode {
  const { t, number } = benchText();
  const [mistakes, setMistakes] = useState<Mistakes>({});
  const [note, setNote] = useState<string | null>(null);
  const names = meter.buffersPhX100.map((_, index) => `buffer-${index}`);
  const submit = async (event: FormEvent<HTMLFormElement>): Promise<void> => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    const shown = names.map((name) => hundredthsOf(String(form.get(name))));
    const slope = hundredthsOf(String(form.get('slope')));
    const wrong = [...names.filter((_, index) => shown[index] === null), ...(slope === null ? ['slope'] : [])];
    setMistakes(Object.fromEntries(wrong.map((name) => [name, t(name === 'slope' ? 'slope-mistake' : 'ph-mistake')])));
    if (slope === null || wrong.length > 0) return;
    const told = await keep({ kind: 'ph-meter', shownPhX100: shown.map((one) => one ?? 0), slopePpm: slope * 100 }, 'meter-bad');
    setNote(told);
    onChecked();
  };
  if (meter.isFit) return <StateWord tone="ok">{t('chip-meter-ok')}</StateWord>;
  const field = { inputMode: 'decimal', autoComplete: 'off', align: 'end', dir: 'ltr' } as const;
  return (
    <form className={styles.stack} onSubmit={(event) => void submit(event)} noValidate>
      <h2 className="type-heading">{t('meter-title')}</h2>
      <p>{t('meter-note')}</p>
      <div className={styles.three}>
        {names.map((name, index) => (
          <TextField
            key={name}
            {...field}
            id={name}
            name={name}
            label={t('meter-buffer', { ph: number((meter.buffersPhX100[index] ?? 0) / 100) })}
            error={mistakes[name]}
          />
        ))}
        <TextField
          {...field}
          id="slope"
          name="slope"
          label={t('meter-slope')}
          hint={t('meter-slope-hint')}
          error={mistakes.slope}
          unit="%"
        />
      </div>
      <Button kind="primary" type="submit">
        {t('fitness-save')}
      </Button>
      <div role="alert">{note !== null && <Notice tone="stop" title={note} />}</div>
    </form>
  );
}
