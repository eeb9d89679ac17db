'use client';
import type { ReactNode } from 'react';
import { useEffect, useState } from 'react';
import { askWhyNot } from '#app/_client/kiosk-why-not.ts';
import { Button } from '#app/_ui/controls/button.tsx';
import { Disclosure } from '#app/_ui/controls/disclosure.tsx';
import type { RuledRow } from '#app/_ui/controls/section-head.tsx';
import { RuledList, SectionHead } from '#app/_ui/controls/section-head.tsx';
import { KioskFrame } from '#app/_ui/frames/kiosk-frame.tsx';
import type { OtherView } from '#lib/contracts/kiosk-choices.ts';
import type { MaskView } from '#lib/contracts/kiosk-masks.ts';
import { moneyMinor } from '#lib/units/money.ts';
import styles from './kiosk.module.css';
import { KioskBar } from './kiosk-bar.tsx';
import type { KioskPageProps } from './kiosk-props.ts';
import { masksOf } from './kiosk-props.ts';
import { madeWith } from './mask-words.ts';
import { PageHeading } from './page-heading.tsx';
import { reasonWords } from './reason-words.ts';
import { goBack } from './use-history.ts';

/** Every shade and active that no shown mask has, with "fits" or why not. What follows from an answer is covered until asked for. */
export function WhyNotPage(props: KioskPageProps): ReactNode {
  const { show, visit, text, onMore } = props;
  const { t } = text;
  const choices = useChoices(props);
  const rowsOf = (kind: OtherView['kind']): readonly RuledRow[] =>
    (choices ?? [])
      .filter((choice) => choice.kind === kind)
      .map((choice) => ({
        id: choice.name,
        title: choice.name,
        note: <Note {...props} choice={choice} />,
        action: choice.mask && <TakeButton {...props} mask={choice.mask} name={choice.name} />,
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
        <KioskBar text={text} onMore={onMore} canGoBack={false}>
          <Button kind="primary" icon="arrow-start" data-main="" onClick={goBack}>
            {t('back-to-masks')}
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
function useChoices({ show, visit }: KioskPageProps): readonly OtherView[] | null {
  const [choices, setChoices] = useState<readonly OtherView[] | null>(null);
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

/** What fits joins the masks that were shown, in place of an earlier choice, and its cautions come next. */
function TakeButton({ visit, dispatch, text: { t }, mask, name }: KioskPageProps & { readonly mask: MaskView; readonly name: string }) {
  const { found } = visit;
  const take = (): void => {
    if (found?.kind !== 'masks') return;
    const masks = [...found.masks.filter((one) => one.role !== 'own-choice'), mask];
    dispatch({ kind: 'take-other', found: { ...found, masks }, token: mask.token });
  };
  return (
    <Button size="small" aria-label={t('choose-other-named', { name })} onClick={take}>
      {t('choose-other')}
    </Button>
  );
}

const MOST_REASONS = 2;

function Note({ show, dispatch, text, choice }: KioskPageProps & { readonly choice: OtherView }): ReactNode {
  const { t, money } = text;
  const { mask } = choice;
  if (mask) return t('why-not-fits', { made: madeWith(mask, text), price: money(moneyMinor(mask.priceMinor), show.currency) });
  const plain = choice.reasons.filter((reason) => !reason.isPersonal).slice(0, MOST_REASONS);
  const personal = choice.reasons.filter((reason) => reason.isPersonal);
  const behind = show.questions.filter((question) => personal.some((reason) => reason.questionIds.includes(question.id)));
  return (
    <span className={styles.reasons}>
      {plain.map((reason) => (
        <span key={reason.reason + reason.names.join()}>{reasonWords(reason, text.lang)}</span>
      ))}
      {personal.length > 0 && (
        <>
          <span>{t('why-not-personal')}</span>
          <Disclosure summary={t('show-why')}>
            {personal.map((reason) => (
              <span key={reason.reason + (reason.tag ?? '')}>{reasonWords(reason, text.lang)}</span>
            ))}
            {behind.map((question) => (
              <Button key={question.id} size="small" icon="undo" onClick={() => dispatch({ kind: 'change', questionId: question.id })}>
                {t('change-question', { question: question.text })}
              </Button>
            ))}
          </Disclosure>
        </>
      )}
    </span>
  );
}
