'use client';
// Before anything is weighed: the bench is clear, protection is on, the jar has its tare and its code.
import type { ReactNode } from 'react';
import { useState } from 'react';
import { confirm } from '#app/_client/bench-acts.ts';
import { Button } from '#app/_ui/controls/button.tsx';
import { ChoiceRow, ChoiceRows } from '#app/_ui/controls/choice-row.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import { JarDrawing } from '#app/_ui/drawing/jar-drawing.tsx';
import type { IconName } from '#app/_ui/marks/icon.tsx';
import { Icon } from '#app/_ui/marks/icon.tsx';
import type { BenchKey } from '#app/_ui/text/bench/en.ts';
import { Digits } from '#app/_ui/weighing/digits.tsx';
import type { BenchDoing } from '#lib/contracts/bench-view.ts';
import styles from './bench.module.css';
import { benchText } from './bench-text.ts';
import type { StepProps } from './desk-frame.tsx';
import { DeskFrame, StepBody } from './desk-frame.tsx';
import { TypedWeight } from './typed-weight.tsx';

const ITEMS: Readonly<Record<string, { readonly word: BenchKey; readonly icon: IconName }>> = {
  'bench-empty': { word: 'item-bench-empty', icon: 'grid' },
  'tools-clean': { word: 'item-tools-clean', icon: 'flask' },
  'fully-cleaned': { word: 'item-fully-cleaned', icon: 'drop' },
  'mask-on': { word: 'item-mask-on', icon: 'face-mask' },
  'eyes-covered': { word: 'item-eyes-covered', icon: 'goggles' },
  'extractor-on': { word: 'item-extractor-on', icon: 'extractor' },
};

export function ConfirmStep(props: StepProps & { readonly doing: Extract<BenchDoing, { kind: 'clearance' | 'protection' }> }): ReactNode {
  const { desk, doing } = props;
  const { t } = benchText();
  const [ticked, setTicked] = useState<readonly string[]>([]);
  const [isStuck, setStuck] = useState(false);
  const isReady = doing.items.every((item) => ticked.includes(item));
  const send = (): void =>
    void desk.act((requestKey) => confirm({ requestKey, orderId: desk.view.orderId, step: { kind: doing.kind, items: [...ticked] } }));
  return (
    <DeskFrame
      {...props}
      actions={
        <Button kind="primary" notReady={!isReady} onClick={isReady ? send : undefined}>
          {t(isReady ? 'confirm-all' : 'confirm-missing')}
        </Button>
      }
    >
      <StepBody title={t(`${doing.kind}-title`)} note={doing.kind === 'clearance' ? t('clearance-note') : doing.cautions.join(' ')}>
        <ChoiceRows columns="one">
          {doing.items.map((item) => (
            <ChoiceRow
              key={item}
              type="checkbox"
              label={ITEMS[item] ? t(ITEMS[item].word) : item}
              mark={ITEMS[item] && <Icon name={ITEMS[item].icon} size="1.4em" />}
              checked={ticked.includes(item)}
              onChange={(event) => setTicked((before) => (event.target.checked ? [...before, item] : before.filter((one) => one !== item)))}
            />
          ))}
        </ChoiceRows>
        <div role="alert">{isStuck && <Notice tone="care" title={t('cannot-note')} />}</div>
        {!isStuck && (
          <Button kind="quiet" size="small" onClick={() => setStuck(true)}>
            {t('cannot')}
          </Button>
        )}
      </StepBody>
    </DeskFrame>
  );
}

export function BindStep(props: StepProps & { readonly doing: Extract<BenchDoing, { kind: 'bind-jar' }> }): ReactNode {
  const { desk, doing } = props;
  const { t } = benchText();
  const [isTyping, setTyping] = useState(false);
  return (
    <DeskFrame
      {...props}
      actions={
        <Button kind="primary" onClick={() => setTyping(true)}>
          {t('type-weight')}
        </Button>
      }
    >
      <StepBody title={t('bind-title')} note={t('bind-note')}>
        <span className={styles.picture}>
          <JarDrawing width={250} height={270} />
        </span>
      </StepBody>
      {isTyping && (
        <TypedWeight
          label={t('bind-field')}
          scale={doing.scale}
          onClose={() => setTyping(false)}
          onDone={(first, again) => {
            setTyping(false);
            void desk.act((requestKey) =>
              confirm({ requestKey, orderId: desk.view.orderId, step: { kind: 'bind-jar', tareUg: first, againUg: again ?? first } }),
            );
          }}
        />
      )}
    </DeskFrame>
  );
}

/** The jar's code, to be written on the jar before the first powder. */
export function MarkPage(props: StepProps & { readonly jarCode: string; readonly onMarked: () => void }): ReactNode {
  const { t } = benchText();
  return (
    <DeskFrame
      {...props}
      actions={
        <Button kind="primary" onClick={props.onMarked}>
          {t('marked-done')}
        </Button>
      }
    >
      <StepBody title={t('marked-title')} note={t('marked-note')}>
        <p className={styles.big}>
          <Digits look="code" text={props.jarCode} />
        </p>
      </StepBody>
    </DeskFrame>
  );
}
