/** The training load table of a tray as facts, and the spans it has as options of a choice. */
import type { Tray } from '../../../run/catalogue.ts';
import type { Step } from '../../../trade/answer.ts';
import { figure } from '../../../trade/figure.ts';
import { type LoadRow, spanByTable } from '../../../trade/span.ts';
import type { Fact } from '../../model.ts';
import { numberFact, rowsFact } from './told.ts';

export const loadRows = ({ loadTable }: Tray): Fact =>
  rowsFact(
    loadTable.map(({ spanFt, lbPerFt }) => ({ span: numberFact(spanFt), carries: numberFact(lbPerFt, 1) })),
  );

/** `ft-8`, or `ask` where no row carries the load. */
export const spanOption = (ft: number | null): string => (ft === null ? 'ask' : `ft-${ft}`);

/** What a load table may bear in inner spans of several, by the note beside it (training value). */
export const SEVERAL_SPANS = 1.25;

/** Working: each row, from the longest down to the one that carries the load, in the words of the trade's span. */
export function rowSteps(table: readonly LoadRow[], lbPerFt: number, pointLb = 0): readonly Step[] {
  const longest = spanByTable(table, lbPerFt, pointLb);
  const rows = [...table].sort((a, b) => b.spanFt - a.spanFt).filter((row) => row.spanFt >= (longest ?? 0));
  return [
    ...rows.map(({ spanFt, lbPerFt: listed }) => ({
      say: spanFt === longest ? 'span.carries' : 'span.tooMuch',
      values: {
        ft: figure(spanFt),
        asked: figure(lbPerFt + (2 * pointLb) / spanFt, 2),
        listed: figure(listed),
      },
    })),
    longest === null ? { say: 'span.askTable' } : { say: 'span.longest', values: { ft: figure(longest) } },
  ];
}
export const ROW_SAYS = ['carries', 'tooMuch', 'askTable', 'longest'].map((key) => `span.${key}`);
