// What the draft does to the range: exact numbers, a few variants by their names, and whether anything that was ordered lately is lost.
import type { ReactNode } from 'react';
import { SectionHead } from '#app/_ui/controls/section-head.tsx';
import type { Variant } from '#lib/rulebook/variant.ts';
import { sharePpm } from '#lib/units/share.ts';
import type { Impact } from '#lib/variants/impact.ts';
import officeStyles from '../office.module.css';
import type { OfficeText } from '../office-text.ts';
import styles from './publish.module.css';
import type { Names } from './rulebook-names.ts';

export function ImpactSection({
  impact,
  names,
  text,
}: {
  readonly impact: Impact;
  readonly names: Names;
  readonly text: OfficeText;
}): ReactNode {
  const { t } = text;
  const nameOf = (variant: Variant): string => variantName(variant, names, text);
  return (
    <section className={officeStyles.section} aria-labelledby="impact">
      <SectionHead id="impact" title={t('impact-title')} />
      <div>
        <p className="type-strong">{t('impact-lost', { count: impact.lostCount })}.</p>
        <Examples id="lost" of={impact.lostExamples.map(nameOf)} count={impact.lostCount} text={text} />
      </div>
      <div>
        <p className="type-strong">{t('impact-gained', { count: impact.gainedCount })}.</p>
        <Examples id="gained" of={impact.gainedExamples.map(nameOf)} count={impact.gainedCount} text={text} />
      </div>
      <div>
        <p>{t('impact-orders', { count: impact.lostKeys.length })}</p>
        <Examples id="ordered" of={impact.lostKeys.map((key) => nameOf(variantOf(key)))} count={impact.lostKeys.length} text={text} />
      </div>
    </section>
  );
}

interface ExamplesProps {
  readonly id: string;
  readonly of: readonly string[];
  readonly count: number;
  readonly text: OfficeText;
}

function Examples({ id, of, count, text }: ExamplesProps): ReactNode {
  if (of.length === 0) return null;
  return (
    <ul className={styles.examples}>
      {of.map((name) => (
        <li key={`${id} ${name}`}>{name}</li>
      ))}
      {count > of.length && <li>{text.t('impact-more', { count: count - of.length })}</li>}
    </ul>
  );
}

/** "Fern Bank, Niacinamide 2 %, Panthenol 0.3 %" */
const variantName = ({ shadeId, actives }: Variant, names: Names, { percent }: OfficeText): string =>
  [names.row('shades', shadeId), ...actives.map((one) => `${names.row('actives', one.activeId)} ${percent(one.levelPpm)}`)].join(', ');

/** What variantKey wrote: "shade|active@level+active@level". */
function variantOf(key: string): Variant {
  const [shadeId = '', chosen = ''] = key.split('|');
  const actives = chosen === '' ? [] : chosen.split('+').map((one) => one.split('@'));
  return { shadeId, actives: actives.map(([activeId = '', level]) => ({ activeId, levelPpm: sharePpm(Number(level)) })) };
}
