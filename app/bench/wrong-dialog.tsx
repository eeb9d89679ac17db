'use client';
// "Something went wrong", from any step: take the last entry back, or throw the jar away.
import type { ReactNode } from 'react';
import { takeBack } from '#app/_client/bench-acts.ts';
import { Button } from '#app/_ui/controls/button.tsx';
import { Dialog } from '#app/_ui/controls/dialog.tsx';
import { massUg } from '#lib/units/mass.ts';
import styles from './bench.module.css';
import { benchText, spokenName } from './bench-text.ts';
import { DiscardWay } from './mend-step.tsx';
import type { Desk } from './use-desk.ts';

export function WrongDialog({ desk, onClose }: { readonly desk: Desk; readonly onClose: () => void }): ReactNode {
  const { t, reading } = benchText();
  const { orderId, jarCode, lastReading } = desk.view;
  const back = (): void => {
    onClose();
    void desk.act((requestKey) => takeBack({ requestKey, orderId, reason: t('reason-typed-wrong') }));
  };
  return (
    <Dialog open size="wide" title={t('wrong-title')} onClose={onClose}>
      <div role="alert">{desk.note}</div>
      <div className={styles.ways}>
        <section className={styles.way}>
          {lastReading ? (
            <>
              <h3 className="type-heading">
                {t('wrong-take-back', {
                  mass: reading(massUg(lastReading.massUg), massUg(lastReading.stepUg)),
                  name: spokenName(lastReading.line),
                })}
              </h3>
              <p>{t('wrong-take-back-note')}</p>
              <Button kind="primary" wide onClick={back}>
                {t('mend-typed-wrong')}
              </Button>
            </>
          ) : (
            <p>{t('wrong-no-take-back')}</p>
          )}
          <Button wide onClick={onClose}>
            {t('go-back')}
          </Button>
        </section>
        {jarCode !== null && <DiscardWay desk={desk} />}
      </div>
    </Dialog>
  );
}
