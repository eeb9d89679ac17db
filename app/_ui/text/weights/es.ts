import type { Catalogue } from '../messages.ts';
import type { WeightsKey } from './en.ts';

export const es: Catalogue<WeightsKey> = {
  empty: 'Escriba el peso que muestra la balanza.',
  'not-a-number': 'Escriba solo cifras, por ejemplo {example}.',
  negative: 'Un peso no puede ser menor que 0. Ponga la balanza a cero y pese otra vez.',
  'other-sign': 'Ha escrito {typed}. Use una coma, no un punto: {meant}.',
  'too-fine':
    '{decimals, plural, =0 {Esta balanza no muestra decimales. Escriba gramos enteros.} one {Esta balanza muestra 1 decimal. Escriba solo lo que muestra.} other {Esta balanza muestra # decimales. Escriba solo lo que muestra.}}',
  'between-steps': 'Esta balanza avanza en pasos de {step}. Léala otra vez.',
  'over-capacity': 'Esta balanza pesa hasta {capacity}. Léala otra vez.',
};
