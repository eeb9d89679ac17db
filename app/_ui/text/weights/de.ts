import type { Catalogue } from '../messages.ts';
import type { WeightsKey } from './en.ts';

export const de: Catalogue<WeightsKey> = {
  empty: 'Tippen Sie das Gewicht ein, das die Waage zeigt.',
  'not-a-number': 'Tippen Sie nur Ziffern ein, zum Beispiel {example}.',
  negative: 'Ein Gewicht kann nicht unter 0 liegen. Tarieren Sie die Waage und wiegen Sie noch einmal.',
  'other-sign': 'Sie haben {typed} getippt. Nehmen Sie ein Komma, keinen Punkt: {meant}.',
  'too-fine':
    '{decimals, plural, =0 {Diese Waage zeigt keine Nachkommastellen. Tippen Sie ganze Gramm ein.} one {Diese Waage zeigt 1 Nachkommastelle. Tippen Sie nur ein, was sie zeigt.} other {Diese Waage zeigt # Nachkommastellen. Tippen Sie nur ein, was sie zeigt.}}',
  'between-steps': 'Diese Waage geht in Schritten von {step}. Lesen Sie noch einmal ab.',
  'over-capacity': 'Diese Waage wiegt bis {capacity}. Lesen Sie noch einmal ab.',
};
