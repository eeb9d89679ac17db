'use client';
// Too much lies in the boat or the vessel. The ways out, best first; going on all the same is not one of them.
import type { FormEvent, ReactNode } from 'react';
import { useState } from 'react';
import { mend, takeBack } from '#app/_client/bench-acts.ts';
import { Button } from '#app/_ui/controls/button.tsx';
import { DataTable } from '#app/_ui/controls/data-table.tsx';
import { Dialog } from '#app/_ui/controls/dialog.tsx';
import { TextField } from '#app/_ui/controls/field.tsx';
import { GramsField } from '#app/_ui/controls/grams-field.tsx';
import { JudgementMark } from '#app/_ui/marks/judgement-mark.tsx';
import { readingDigits, targetDigits } from '#app/_ui/text/format-grams.ts';
import { parseGrams } from '#app/_ui/text/parse-grams.ts';
import type { BenchDoing } from '#lib/contracts/bench-view.ts';
import type { MassUg } from '#lib/units/mass.ts';
import { massUg } from '#lib/units/mass.ts';
import { moneyMinor } from '#lib/units/money.ts';
import styles from './bench.module.css';
import { benchText, shownName } from './bench-text.ts';
import type { StepProps } from './desk-frame.tsx';
import { DeskFrame } from './desk-frame.tsx';
import { SecondSignature } from './second-person.tsx';

type Mending = Extract<BenchDoing, { kind: 'mend' }>;

export function MendStep(props: StepProps & { readonly doing: Mending }): ReactNode {
  const { desk, doing } = props;
  const { t, reading } = benchText();
  const stepUg = massUg(doing.scale.stepUg);
  const { orderId, lastReading } = desk.view;
  const back = (): void => void desk.act((requestKey) => takeBack({ requestKey, orderId, reason: t('reason-typed-wrong') }));
  return (
    <DeskFrame {...props} bare actions={null}>
      <div className={styles.titled}>
        <JudgementMark kind="never" size="2.6em" />
        <h1 className="type-title">
          {t('mend-title', { mass: reading(massUg(doing.weighedUg), stepUg), most: reading(massUg(doing.hiUg), stepUg) })}
        </h1>
      </div>
      <div className={styles.titled}>
        <p>{t(doing.container === 'boat' ? 'mend-boat-note' : 'mend-vessel-note')}</p>
        {lastReading && (
          <Button kind="quiet" size="small" icon="undo" onClick={back}>
            {t('mend-typed-wrong')}
          </Button>
        )}
      </div>
      <div className={styles.ways}>
        {doing.outUg === null ? <GrowWay {...props} /> : <OutWay {...props} outUg={massUg(doing.outUg)} />}
        <DiscardWay {...props} />
      </div>
    </DeskFrame>
  );
}

function OutWay({ desk, doing, outUg }: StepProps & { readonly doing: Mending; readonly outUg: MassUg }): ReactNode {
  const { t, reading, decimalSign } = benchText();
  const [text, setText] = useState('');
  const [isShown, setShown] = useState(false);
  const reach = { stepUg: massUg(doing.scale.stepUg), capacityUg: massUg(doing.scale.capacityUg) };
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    const typed = parseGrams(text, { decimalSign, ...reach });
    setShown(!typed.ok);
    if (!typed.ok) desk.say(null);
    if (typed.ok)
      void desk.act((requestKey) => mend({ requestKey, orderId: desk.view.orderId, mend: { kind: 'take-out', outUg: typed.value } }));
  };
  return (
    <form className={styles.way} onSubmit={submit} noValidate>
      <h2 className="type-heading">{t('mend-out-title', { mass: reading(outUg, reach.stepUg) })}</h2>
      <p className="type-small type-second">{t('mend-out-note', { left: reading(massUg(doing.weighedUg - outUg), reach.stepUg) })}</p>
      <GramsField
        id="out"
        label={t('mend-out-field')}
        lang="en"
        {...reach}
        text={text}
        onText={(typed) => setText(typed)}
        showMistake={isShown}
        autoFocus
      />
      <Button kind="primary" type="submit" wide>
        {t('mend-out-do')}
      </Button>
    </form>
  );
}

function GrowWay({ desk, doing }: StepProps & { readonly doing: Mending }): ReactNode {
  const { t, target, money } = benchText();
  const [isSigning, setSigning] = useState(false);
  const { grow } = doing;
  const { orderId, netUg, currency } = desk.view;
  const stepUg = massUg(doing.scale.stepUg);
  if (grow === null)
    return (
      <section className={styles.way}>
        <h2 className="type-heading">{t('mend-no-grow')}</h2>
        {doing.growRefusals.map((why) => (
          <p key={why}>{t(`why-${why}`)}</p>
        ))}
      </section>
    );
  return (
    <section className={styles.way}>
      <h2 className="type-heading">{t('mend-grow-title', { from: target(massUg(grow.fromUg)), to: target(massUg(grow.toUg)) })}</h2>
      <p className="type-small type-second">
        {t('mend-grow-note', { net: target(massUg(netUg)), cost: money(moneyMinor(grow.wasteMinor), currency) })}
      </p>
      <DataTable
        caption={t('col-top-up')}
        density="compact"
        columns={[
          { id: 'name', head: t('col-top-up') },
          { id: 'now', head: t('col-now'), align: 'point', wholeDigits: 2 },
          { id: 'total', head: t('col-total'), align: 'point', wholeDigits: 2 },
          { id: 'add', head: t('col-add'), align: 'point', wholeDigits: 2 },
        ]}
        rows={grow.topUps.map(({ line, nowUg, totalUg, addUg }) => {
          const name = shownName(line);
          return {
            id: name,
            cells: [
              name,
              readingDigits(massUg(nowUg), stepUg, 'en'),
              readingDigits(massUg(totalUg), stepUg, 'en'),
              targetDigits(massUg(addUg), 'en'),
            ],
          };
        })}
      />
      {grow.needsSecondPaste && <p>{t('mend-grow-paste')}</p>}
      <Button kind="primary" icon="person" wide onClick={() => setSigning(true)}>
        {t('mend-grow-do')}
      </Button>
      {isSigning && (
        <Dialog open title={t('second-title')} onClose={() => setSigning(false)}>
          <SecondSignature
            isBusy={desk.isBusy}
            onSign={(second) => {
              setSigning(false);
              void desk.act((requestKey) => mend({ requestKey, orderId, mend: { kind: 'grow', second: { ...second } } }));
            }}
          />
          <Button wide onClick={() => setSigning(false)}>
            {t('go-back')}
          </Button>
        </Dialog>
      )}
    </section>
  );
}

/** With a reason; a new order takes the place of this one. */
export function DiscardWay({ desk }: Pick<StepProps, 'desk'>): ReactNode {
  const { t, reading, money } = benchText();
  const { orderId, discard, currency } = desk.view;
  const [isMissing, setMissing] = useState(false);
  const submit = (event: FormEvent<HTMLFormElement>): void => {
    event.preventDefault();
    const reason = String(new FormData(event.currentTarget).get('reason')).trim();
    setMissing(reason === '');
    if (reason === '') desk.say(null);
    else void desk.act((requestKey) => mend({ requestKey, orderId, mend: { kind: 'discard', reason } }));
  };
  return (
    <form className={styles.way} onSubmit={submit} noValidate>
      <h2 className="type-heading">{t('discard-title')}</h2>
      <p className="type-small type-second">
        {discard.massUg === 0
          ? t('discard-note-none')
          : t('discard-note', {
              mass: reading(massUg(discard.massUg), massUg(discard.stepUg)),
              cost: money(moneyMinor(discard.wasteMinor), currency),
            })}
      </p>
      <TextField
        id="reason"
        name="reason"
        label={t('discard-reason')}
        hint={t('discard-reason-hint')}
        error={isMissing ? t('reason-missing') : undefined}
        autoComplete="off"
        maxLength={500}
      />
      <Button kind="destructive" type="submit" wide>
        {t('discard-do')}
      </Button>
    </form>
  );
}
