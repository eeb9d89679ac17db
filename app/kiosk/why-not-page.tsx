'use client';
import type { ReactNode } from 'react';
import { useEffect, useState } from 'react';
import { askWhyNot } from '#app/_client/kiosk-why-not.ts';
import { Button } from '#app/_ui/controls/button.tsx';
import { Disclosure } from '#app/_ui/controls/disclosure.tsx';
import type { RuledRow } from '#app/_ui/controls/section-head.tsx';
import { RuledList, SectionHead } from '#app/_ui/controls/section-head.tsx';
import { KioskFrame } from '#app/_ui/frames/kiosk-frame.tsx';
import type { ChoiceView } from '#lib/contracts/kiosk-choices.ts';
import styles from './kiosk.module.css';
import { KioskBar } from './kiosk-bar.tsx';
import type { KioskPageProps } from './kiosk-props.ts';
import { masksOf } from './kiosk-props.ts';
import type { KioskText } from './kiosk-text.ts';
import { PageHeading } from './page-heading.tsx';
import { reasonWords } from './reason-words.ts';
import { goBack } from './use-history.ts';

/** Every shade and active that no shown mask has, with "fits" or why not. What follows from an answer is covered until asked for. */
export function WhyNotPage(props: KioskPageProps): ReactNode {
  const { show, visit, dispatch, text, onMore } = props;
  const { t } = text;
  const choices = useChoices(props);
  const rowsOf = (kind: ChoiceView['kind']): readonly RuledRow[] =>
    (choices ?? [])
      .filter((choice) => choice.kind === kind)
      .map((choice) => ({
        id: choice.name,
        title: choice.name,
        note: (
          <Reasons
            choice={choice}
            questions={show.questions}
            text={text}
            onChange={(questionId) => dispatch({ kind: 'change', questionId })}
          />
        ),
      }));
  const [shades, actives] = [rowsOf('shade'), rowsOf('active')];
  return (
    <KioskFrame
      brand={show.shopName}
      place={t('why-not-place')}
      titleSize="results"
      flow="list"
      shown={
        <>
          <PageHeading text={text}>{t('why-not-title')}</PageHeading>
          <span className="type-second">{t('why-not-note', { name: masksOf(visit)[0]?.shadeName ?? '' })}</span>
        </>
      }
      bar={
        <KioskBar text={text} onMore={onMore}>
          <Button kind="primary" data-main="" onClick={goBack}>
            {t('done')}
          </Button>
        </KioskBar>
      }
    >
      <div className={styles.stack}>
        {choices !== null && shades.length + actives.length === 0 && <p>{t('why-not-none')}</p>}
        {shades.length > 0 && (
          <section className={styles.stack}>
            <SectionHead title={t('why-not-shades')} />
            <RuledList rows={shades} />
          </section>
        )}
        {actives.length > 0 && (
          <section className={styles.stack}>
            <SectionHead title={t('why-not-actives')} />
            <RuledList rows={actives} />
          </section>
        )}
      </div>
    </KioskFrame>
  );
}

/** Asked for when the page opens; null until the answer is there. A server that is away shows an empty page, with the way back. */
function useChoices({ show, visit }: KioskPageProps): readonly ChoiceView[] | null {
  const [choices, setChoices] = useState<readonly ChoiceView[] | null>(null);
  useEffect(() => {
    const asking = { isWanted: true };
    const answers = visit.answers.map(({ questionId, optionIds }) => ({ questionId, optionIds: [...optionIds] }));
    const shownTokens = masksOf(visit).map((mask) => mask.token);
    const { editionHash, lang, jarSizes } = show;
    void askWhyNot({ editionHash, lang, jarSizeId: jarSizes[0]?.id ?? '', answers, shownTokens }).then((reply) => {
      if (asking.isWanted && reply.kind === 'answer' && reply.body.ok) setChoices(reply.body.choices);
    });
    return () => {
      asking.isWanted = false;
    };
  }, [show, visit]);
  return choices;
}

interface ReasonsProps {
  readonly choice: ChoiceView;
  readonly questions: KioskPageProps['show']['questions'];
  readonly text: KioskText;
  readonly onChange: (questionId: string) => void;
}

const MOST_REASONS = 2;

function Reasons({ choice, questions, text: { t }, onChange }: ReasonsProps): ReactNode {
  if (choice.token !== null) return t('why-not-fits');
  const plain = choice.reasons.filter((reason) => !reason.isPersonal).slice(0, MOST_REASONS);
  const personal = choice.reasons.filter((reason) => reason.isPersonal);
  const behind = questions.filter((question) => personal.some((reason) => reason.questionIds.includes(question.id)));
  return (
    <span className={styles.reasons}>
      {plain.map((reason) => (
        <span key={reason.reason + reason.names.join()}>{reasonWords(reason)}</span>
      ))}
      {personal.length > 0 && (
        <>
          <span>{t('why-not-personal')}</span>
          <Disclosure summary={t('show-why')}>
            {personal.map((reason) => (
              <span key={reason.reason + (reason.tag ?? '')}>{reasonWords(reason)}</span>
            ))}
            {behind.map((question) => (
              <Button key={question.id} size="small" icon="undo" onClick={() => onChange(question.id)}>
                {t('change-question', { question: question.text })}
              </Button>
            ))}
          </Disclosure>
        </>
      )}
    </span>
  );
}
