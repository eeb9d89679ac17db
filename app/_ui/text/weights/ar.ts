import type { Catalogue } from '../messages.ts';
import type { WeightsKey } from './en.ts';

export const ar: Catalogue<WeightsKey> = {
  empty: 'اكتب الوزن الذي يظهر على الميزان.',
  'not-a-number': 'اكتب أرقامًا فقط، مثل {example}.',
  negative: 'لا يمكن أن يكون الوزن أقل من 0. صفّر الميزان وزِن مرة أخرى.',
  'other-sign': 'كتبت {typed}. استعمل النقطة لا الفاصلة: {meant}.',
  'too-fine':
    '{decimals, plural, =0 {هذا الميزان لا يعرض كسورًا. اكتب غرامات كاملة.} one {هذا الميزان يعرض منزلة عشرية واحدة. اكتب ما يعرضه فقط.} two {هذا الميزان يعرض منزلتين عشريتين. اكتب ما يعرضه فقط.} other {هذا الميزان يعرض # منازل عشرية. اكتب ما يعرضه فقط.}}',
  'between-steps': 'هذا الميزان يتحرك بخطوات من {step}. اقرأه مرة أخرى.',
  'over-capacity': 'هذا الميزان يزن حتى {capacity}. اقرأه مرة أخرى.',
};
