// The mixing card on A5: black only, weights on the point, everything that a power cut must not take away.
import type { ReactNode } from 'react';
import type { PrintCard, PrintLine } from '#app/_flows/show-print-card.ts';
import { PointNumber } from '#app/_ui/figure/point-number.tsx';
import { Icon } from '#app/_ui/marks/icon.tsx';
import { gramsParts, readingDigits, targetDigits } from '#app/_ui/text/format-grams.ts';
import type { MassUg } from '#lib/units/mass.ts';
import { localDayIn } from '#lib/units/time.ts';
import { isInPaste } from '#lib/weighing/bench-line.ts';
import { DataMatrix } from './data-matrix.tsx';
import styles from './mixing-card.module.css';
import type { PrintText } from './print-text.ts';
import { printName, printText } from './print-text.ts';

export function MixingCard({ card }: { readonly card: PrintCard }): ReactNode {
  const text = printText();
  const { t, target } = text;
  const paste = card.lines.filter((line) => isInPaste(line.place));
  const cream = card.lines.filter((line) => line.place === 'cream');
  const last = card.lines.filter((line) => line.place === 'with-cream' || line.place === 'last');
  return (
    <article className={styles.sheet}>
      <header className={styles.head}>
        <div>
          <p className={styles.code}>
            <bdi dir="ltr">{card.shortCode}</bdi>
          </p>
          <h1 className={styles.name}>{t('card-name', { name: card.name, net: target(card.netUg) })}</h1>
          <p className={styles.facts}>{factsText(card, text)}</p>
          <p className={styles.facts}>
            {t('card-batch', { batch: target(card.batchUg), net: target(card.netUg), left: target(card.leftUg) })}
          </p>
        </div>
        <DataMatrix kind="datamatrix" text={card.jarCode ?? card.orderId} label={t('card-matrix')} className={styles.matrix} />
      </header>
      <Lines head={t('card-paste')} lines={paste} heads end={t('card-smooth')} />
      <Lines head={t('card-cream', { count: cream[0]?.portionsUg.length ?? 0 })} lines={cream} />
      {last.length > 0 && (
        <Lines head={card.atMostC === null ? t('card-last') : t('card-last-cool', { celsius: card.atMostC })} lines={last} />
      )}
      <Checks card={card} text={text} />
      {card.cautions.length > 0 && (
        <p className={styles.care}>
          <Icon name="eye" size="10mm" />
          <span>{card.cautions.join(' ')}</span>
        </p>
      )}
      <footer className={styles.foot}>
        <p className={styles.sign}>{t('card-made-by')}</p>
        <p className={styles.sign}>{t('card-checked-by')}</p>
        <p className={styles.legend}>
          {card.lines.some((line) => line.needsSecondPerson) && (
            <>
              <span className={styles.square} /> {t('card-second')}{' '}
            </>
          )}
          {t('card-unit')}
        </p>
        <p className={styles.end}>{t('card-page')}</p>
      </footer>
    </article>
  );
}

function factsText(card: PrintCard, { t, day, time }: PrintText): string {
  const printed = { day: day(localDayIn(card.zone, card.printedAtMs)), time: time(card.printedAtMs, card.zone) };
  const facts = t('card-facts', { base: card.baseCode, edition: card.editionNo, ...printed });
  return card.issueNo > 1 ? `${facts} ${t('card-newer', { no: card.issueNo })}` : facts;
}

const COLUMNS = ['colNo', 'colName', 'colWeight', 'colRange', 'colLot', 'colTick'] as const;

function Lines(props: {
  readonly head: string;
  readonly lines: readonly PrintLine[];
  readonly heads?: boolean;
  readonly end?: string;
}): ReactNode {
  const { t } = printText();
  return (
    <table className={styles.lines}>
      <colgroup>
        {COLUMNS.map((column) => (
          <col key={column} className={styles[column]} />
        ))}
      </colgroup>
      <thead>
        <tr>
          <th scope="col" colSpan={props.heads ? 2 : COLUMNS.length}>
            {props.head}
          </th>
          {props.heads && (
            <>
              <th scope="col" className={styles.weightHead}>
                {t('card-weigh')}
              </th>
              <th scope="col">{t('card-range')}</th>
              <th scope="col">{t('card-lot')}</th>
              <th scope="col">
                <span className="for-readers">{t('card-done')}</span>
              </th>
            </>
          )}
        </tr>
      </thead>
      <tbody>
        {props.lines.map((line) => (
          <Line key={line.lineNo} line={line} />
        ))}
        {props.end && (
          <tr className={styles.note}>
            <td />
            <td colSpan={5}>{props.end}</td>
          </tr>
        )}
      </tbody>
    </table>
  );
}

/** Two places before the point, so that the points of a column of fixed-width letters stand under each other. */
function onPoint(mass: MassUg, step: MassUg): string {
  const digits = readingDigits(mass, step, 'en');
  return `${'\u00a0'.repeat(Math.max(0, 2 - digits.indexOf('.')))}${digits}`;
}

function Line({ line }: { readonly line: PrintLine }): ReactNode {
  const { t } = printText();
  const { whole, fraction } = gramsParts(line.targetUg, 'en');
  return (
    <>
      <tr>
        <td className={styles.no}>{line.lineNo}</td>
        <th scope="row" className={line.needsSecondPerson ? styles.flagged : styles.plain}>
          {line.needsSecondPerson && <span className={styles.square} />} {printName(line.name)}
        </th>
        <td className={styles.weight}>
          <PointNumber text={fraction === '' ? whole : `${whole}.${fraction}`} decimalSign="." wholeDigits={2} fractionDigits={2} />
        </td>
        <td className={styles.range}>{t('card-band', { lo: onPoint(line.loUg, line.stepUg), hi: onPoint(line.hiUg, line.stepUg) })}</td>
        <td className={styles.lot}>
          <bdi dir="ltr">{line.lotCodes.join(' ')}</bdi>
        </td>
        <td className={styles.tick}>
          <span className={styles.box} />
        </td>
      </tr>
      {line.portionsUg.length > 1 && (
        <tr className={styles.note}>
          <td />
          <td colSpan={5}>
            <span className={styles.portions}>
              {line.portionsUg.map((portion, index) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: a portion is its place
                <span key={index} className={styles.portion}>
                  <span className={styles.box} /> {targetDigits(portion, 'en')}
                </span>
              ))}
            </span>
          </td>
        </tr>
      )}
    </>
  );
}

const phText = (phX100: number): string => (phX100 / 100).toFixed(2);

function Checks({ card, text }: { readonly card: PrintCard; readonly text: PrintText }): ReactNode {
  const { t, target } = text;
  return (
    <div className={styles.checks}>
      <p>
        {card.ph && <span className={styles.box} />}{' '}
        <strong>{card.ph ? t('card-ph', { min: phText(card.ph.minPhX100), max: phText(card.ph.maxPhX100) }) : t('card-no-ph')}</strong>
        <br />
        {card.ph && t('card-read')}
      </p>
      <p>
        <span className={styles.box} /> <strong>{t('card-net', { net: target(card.netUg) })}</strong>
        <br />
        {t('card-read')}
      </p>
    </div>
  );
}
