'use client';
// One visit, from the first touch to the code, in one document. Everything about it lives in this component's memory and dies with it.
import type { ReactNode } from 'react';
import { useCallback, useEffect, useReducer, useState } from 'react';
import { newVisit, pageOf, reduceVisit } from '#lib/answers/visit.ts';
import type { KioskShow } from '#lib/contracts/kiosk-show.ts';
import type { Lang } from '#lib/rulebook/language.ts';
import { KioskPage } from './kiosk-page.tsx';
import type { Found, KioskAction, KioskVisitState, Receipt, TextSize } from './kiosk-props.ts';
import { kioskText } from './kiosk-text.ts';
import { MoreDialog } from './more-dialog.tsx';
import { StillHere } from './still-here.tsx';
import { useHistory } from './use-history.ts';
import { useServer } from './use-server.ts';
import { useWipe } from './use-wipe.ts';

export interface KioskVisitProps {
  readonly firstShow: KioskShow;
  readonly counterCode: string;
}

export function KioskVisit({ firstShow, counterCode }: KioskVisitProps): ReactNode {
  const [show, setShow] = useState(firstShow);
  const text = kioskText(show.lang);
  const [visit, dispatch] = useReducer<KioskVisitState, KioskShow, [KioskAction]>(reduceVisit<Found, Receipt>, firstShow, (first) =>
    newVisit(first),
  );
  const [isMoreOpen, setMoreOpen] = useState(false);
  const [hasMoreTime, setMoreTime] = useState(false);
  const [textSize, setTextSize] = useState<TextSize>('100');

  const adopt = useCallback((next: KioskShow): void => {
    setShow(next);
    dispatch({ kind: 'adopt', questionnaire: next });
  }, []);
  const speak = useCallback(
    (lang: Lang): void => {
      const next = { ...show, ...show.wordings.find((wording) => wording.lang === lang) };
      setShow(next);
      dispatch({ kind: 'speak', questionnaire: next });
    },
    [show],
  );
  useEffect(() => {
    document.documentElement.lang = show.lang;
  }, [show.lang]);
  const { talk, order, forget, leave } = useServer({ show, counterCode, visit, dispatch, adopt });
  const drop = useCallback((): void => {
    const [first] = show.wordings;
    if (first) speak(first.lang);
    dispatch({ kind: 'wipe' });
    leave();
    setMoreOpen(false);
    setMoreTime(false);
    setTextSize('100');
  }, [leave, show.wordings, speak]);

  const page = pageOf(visit);
  const isEmpty = page.kind === 'start' && visit.answers.length === 0;
  const wipe = useWipe({ isEmpty, editionNo: show.editionNo, drop });
  const showPage = useCallback(
    (at: number): void => {
      forget();
      dispatch({ kind: 'show', at });
    },
    [forget],
  );
  useHistory(visit.at, showPage);

  const openMore = useCallback(() => setMoreOpen(true), []);
  const lookAgain = useCallback((): void => {
    forget();
    dispatch({ kind: 'look-again' });
  }, [forget]);

  return (
    <>
      <KioskPage
        page={page}
        talk={talk}
        onOrder={order}
        onLookAgain={lookAgain}
        hasMoreTime={hasMoreTime}
        onMoreTime={() => setMoreTime(true)}
        {...{ show, visit, dispatch, text, onLanguage: speak, onMore: openMore, onWipe: wipe }}
      />
      <div data-face="kiosk">
        <MoreDialog
          open={isMoreOpen}
          canStartAgain={!isEmpty}
          onClose={() => setMoreOpen(false)}
          onWipe={wipe}
          languages={visit.receipt ? [] : show.wordings.map(({ lang }) => lang)}
          onLanguage={speak}
          {...{ text, textSize, hasMoreTime }}
          onTextSize={setTextSize}
          onMoreTime={() => setMoreTime(true)}
        />
        <StillHere
          idleS={isEmpty ? null : idleLimitS(page.kind, textSize, (visit.receipt?.notOnJar.length ?? 0) > 0) * (hasMoreTime ? 10 : 1)}
          isCode={page.kind === 'code'}
          onWipe={wipe}
          text={text}
        />
      </div>
    </>
  );
}

/** Seconds of quiet before we ask: questions are short, masks and cautions want reading, and large text wants more of it. */
function idleLimitS(page: ReturnType<typeof pageOf>['kind'], textSize: TextSize, hasOwnCautions: boolean): number {
  if (textSize === '200') return 300;
  if (page === 'code') return hasOwnCautions ? 180 : 60;
  return page === 'results' || page === 'why-not' || page === 'cautions' ? 180 : 90;
}
