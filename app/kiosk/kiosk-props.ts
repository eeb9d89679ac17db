// What every page of a visit is given.

import type { Visit, VisitAction } from '#lib/answers/visit.ts';
import type { MasksOutput, MaskView } from '#lib/contracts/kiosk-masks.ts';
import type { OrderOutput } from '#lib/contracts/kiosk-order.ts';
import type { KioskShow } from '#lib/contracts/kiosk-show.ts';
import type { Lang } from '#lib/rulebook/language.ts';
import type { KioskText } from './kiosk-text.ts';

export type Found = Extract<MasksOutput, { ok: true }>;

/**
 * What stays of an order on the page: its code, the jar's picture, and the cautions that the jar does not print. These may come from an
 * answer; they are on this one page, for the customer to take along, and go with it.
 */
export interface Receipt extends Omit<Extract<OrderOutput, { ok: true }>, 'ok'> {
  readonly title: string;
  readonly picture: Pick<MaskView, 'layers' | 'colour'>;
  readonly notOnJar: MaskView['cautions'];
}

export type KioskVisitState = Visit<Found, Receipt>;
export type KioskAction = VisitAction<Found, Receipt>;

/** What is asked of the server. */
export type Wish = 'masks' | 'order';

/** Where the talk with the server stands; `quiet`: nothing is asked and nothing is wrong. */
export type Talk =
  | { readonly kind: 'quiet' | 'pulled' }
  | { readonly kind: 'asking' | 'offline'; readonly wish: Wish }
  | { readonly kind: 'problem'; readonly detail: string };

/** Percent of the usual size. */
export type TextSize = '100' | '150' | '200';

export interface KioskPageProps {
  readonly show: KioskShow;
  readonly visit: KioskVisitState;
  readonly dispatch: (action: KioskAction) => void;
  readonly text: KioskText;
  /** Goes on in another language. */
  readonly onLanguage: (lang: Lang) => void;
  readonly onMore: () => void;
  readonly onWipe: () => void;
  readonly onOrder: () => void;
  /** Masks anew, after one was taken off the list. */
  readonly onLookAgain: () => void;
  readonly hasMoreTime: boolean;
  readonly onMoreTime: () => void;
}

/** The masks of a visit, once they are found. */
export const masksOf = ({ found }: Pick<KioskVisitState, 'found'>): readonly MaskView[] => (found?.kind === 'masks' ? found.masks : []);
