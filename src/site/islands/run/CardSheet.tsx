import type { ReactNode } from 'react';
import { paperPalette } from '../../../drawing/palette.ts';
import { logo } from '../../../drawing/signs.ts';
import type { RunFile } from '../../../run/edit/file.ts';
import { dayText } from '../../dates.ts';
import type { Tell } from '../../speak.ts';

export interface SheetProps {
  readonly file: RunFile;
  readonly title: string;
  /** `YYYY-MM-DD`. */
  readonly today: string;
  /** Sheets of this card. */
  readonly count: number;
  readonly tell: Tell;
}

interface Props extends SheetProps {
  readonly number: number;
  readonly children: ReactNode;
}

/** A sheet of a job card in its border: head and title block. */
export function CardSheet({ file, title, today, number, count, tell, children }: Props) {
  const head = tell('yourRun.jobCardOf', { title });
  const block = [
    ['title', number === 1 ? head : tell('yourRun.listOf', { title: head })],
    ['number', file.number === '' ? '–' : tell('yourRun.cardNumber', { number: file.number })],
    ['revision', tell('yourRun.draft')],
    ['dated', today === '' ? '–' : dayText(tell, today)],
    ['works', file.place || '–'],
    ['status', tell('yourRun.cardStatus')],
  ] as const;
  return (
    <article className="job-card" aria-label={head}>
      <header>
        {/* biome-ignore lint/security/noDangerouslySetInnerHtml: our own mark */}
        <span dangerouslySetInnerHTML={{ __html: logo(paperPalette) }} />
        <b>{tell('sheet.name')}</b>
        <span>{count === 1 ? head : `${head} · ${tell('yourRun.cardSheet', { number, count })}`}</span>
      </header>
      <div className="card-body">{children}</div>
      <dl className="card-block">
        {block.map(([key, value]) => (
          <div key={key}>
            <dt>{tell(`sheet.${key}`)}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </article>
  );
}
