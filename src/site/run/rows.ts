/** A row of a list of a run in one line. */
import type { Ticks } from '../../trade/length.ts';
import type { SiteKey, Tell } from '../speak.ts';
import type { ListName } from './fields.ts';
import type { Long } from './lengths.ts';

type Row = Readonly<Record<string, unknown>>;
const text = (value: unknown) => (value === undefined ? '–' : String(value));
const length = (value: unknown, long: Long) => (typeof value === 'number' ? long(value as Ticks) : '–');
const word = (group: string, value: unknown, tell: Tell) =>
  value === undefined ? '–' : tell(`yourRun.${group}-${String(value)}` as SiteKey);

const LINES: Readonly<Record<ListName, (row: Row, tell: Tell, long: Long) => string>> = {
  ends: (row, tell) =>
    tell('yourRun.line-ends', { leg: text(row['leg']), kind: word('kind', row['kind'], tell) }),
  joints: (row, tell, long) =>
    tell('yourRun.line-joints', {
      leg: text(row['leg']),
      at: length(row['at'], long),
      kind: word('joint', row['kind'], tell),
    }),
  supports: (row, tell, long) =>
    tell('yourRun.line-supports', {
      leg: text(row['leg']),
      at: length(row['at'], long),
      way: word('way', row['way'], tell),
      hold: word('hold', row['hold'], tell),
    }),
  cables: (row, tell) =>
    tell('yourRun.line-cables', {
      id: text(row['id']),
      count: text(row['count']),
      type: row['type'] === 'tube' ? tell('yourRun.tube') : text(row['type']),
      od: text(row['odIn']),
      to: text(row['to']),
    }),
  places: (row, tell, long) =>
    tell('yourRun.line-places', {
      leg: text(row['leg']),
      at: Array.isArray(row['at']) ? row['at'].map((one) => length(one, long)).join(', ') : '–',
    }),
  marks: (row, tell, long) =>
    tell('yourRun.line-marks', { leg: text(row['leg']), at: length(row['at'], long) }),
};

export const rowLine = (list: ListName, row: Row, k: number, tell: Tell, long: Long): string =>
  tell('yourRun.rowLine', { number: k + 1, line: LINES[list](row, tell, long) });
