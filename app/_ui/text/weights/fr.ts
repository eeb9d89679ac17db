import type { Catalogue } from '../messages.ts';
import type { WeightsKey } from './en.ts';

export const fr: Catalogue<WeightsKey> = {
  empty: 'Tapez le poids affiché par la balance.',
  'not-a-number': 'Tapez seulement des chiffres, par exemple {example}.',
  negative: 'Un poids ne peut pas être inférieur à 0. Faites la tare et pesez de nouveau.',
  'other-sign': 'Vous avez tapé {typed}. Utilisez une virgule, pas un point : {meant}.',
  'too-fine':
    '{decimals, plural, =0 {Cette balance n’affiche pas de décimale. Tapez des grammes entiers.} one {Cette balance affiche 1 décimale. Tapez seulement ce qu’elle affiche.} other {Cette balance affiche # décimales. Tapez seulement ce qu’elle affiche.}}',
  'between-steps': 'Cette balance avance par pas de {step}. Relisez-la.',
  'over-capacity': 'Cette balance pèse jusqu’à {capacity}. Relisez-la.',
};
