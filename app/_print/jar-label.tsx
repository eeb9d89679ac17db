// The label of one jar, 90 × 50 mm: what it is at the inline start, what to know beside it. Black on the stock's own colour.
import type { ReactNode } from 'react';
import type { LabelView } from '#app/_flows/show-label.ts';
import { BrandMark } from '#app/_ui/drawing/brand-mark.tsx';
import type { LabelContent } from '#lib/label/label-content.ts';
import { DataMatrix } from './data-matrix.tsx';
import styles from './jar-label.module.css';
import { LabelStrata } from './label-strata.tsx';
import { printText } from './print-text.ts';
import { unbroken } from './unbroken.ts';

export function JarLabel({ label }: { readonly label: LabelView }): ReactNode {
  const { content, copyNo, layers } = label;
  const { t } = printText();
  const [shade, ...actives] = content.variantNames;
  return (
    <article className={styles.label} lang={content.lang}>
      <div className={styles.strip} data-fit="">
        <p className={styles.brand}>
          <BrandMark heightEm={1.7} ink="ink-only" />
          <span>{content.shop.name}</span>
        </p>
        <h1 className={styles.name}>{shade}</h1>
        <p className={styles.kind}>{[content.productName, ...actives].join(', ')}</p>
        <LabelStrata layers={layers} />
        <p className={styles.net}>{netText(content)}</p>
      </div>
      <div className={styles.rest} data-fit="">
        <p>{unbroken(content.directions)}</p>
        <p className={styles.cautions}>{content.cautions.map((caution) => unbroken(caution.text)).join(' ')}</p>
        <p>
          <strong>{t('label-ingredients')}</strong> {content.ingredientsText}
        </p>
        <div className={styles.last}>
          {content.code && (
            <DataMatrix
              kind="gs1datamatrix"
              text={content.code.bracketed}
              label={t('label-matrix', { code: content.batchCode ?? '' })}
              className={styles.matrix}
            />
          )}
          <p>
            <bdi dir="ltr" className={styles.batch}>
              {content.batchCode}
            </bdi>{' '}
            {durabilityText(content)}
            {copyNo > 1 && <span className={styles.copy}> {t('label-copy', { no: copyNo })}</span>}
            <br />
            {content.responsiblePerson.name}, {content.responsiblePerson.address}
          </p>
        </div>
      </div>
    </article>
  );
}

function netText({ netContent: { gramsText, ouncesText } }: LabelContent): string {
  const { t } = printText();
  return ouncesText === null ? t('label-net', { grams: gramsText }) : t('label-net-both', { grams: gramsText, ounces: ouncesText });
}

/** A date or the time after opening, never both. */
function durabilityText({ durability }: LabelContent): string {
  const { t, day } = printText();
  return durability.kind === 'date'
    ? t('label-use-by', { day: day(durability.day) })
    : t('label-open', { months: durability.openedMonths });
}
