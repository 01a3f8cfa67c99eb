/** What the cutting plan's sheet asks, and the job that its form and the rack come to. Pure. */
import { KERF, REUSABLE, STOCK } from '../../trade/habits.ts';
import { readLength } from '../../trade/length.ts';
import type { SticksGiven } from '../../trade/sticks/types.ts';
import type { Fields, ReadOf } from '../calculators/fields.ts';
import type { Rack } from './rack.ts';

const long = { kind: 'length', scale: 'feet', from: 'above 0', label: 'sticksSheet.length' } as const;

export const sticksFields = {
  pieces: {
    kind: 'rows',
    label: 'sticksSheet.pieces',
    row: 'sticksSheet.piece',
    add: 'sticksSheet.addPiece',
    takeOut: 'sticksSheet.takeOutPiece',
    least: 1,
    fresh: { count: 1 },
    fields: {
      length: long,
      count: { kind: 'count', from: 1, label: 'sticksSheet.count' },
      mark: { kind: 'words', label: 'sticksSheet.markEntry', optional: true },
    },
  },
  stock: {
    kind: 'rows',
    label: 'sticksSheet.stocks',
    row: 'sticksSheet.stockRow',
    add: 'sticksSheet.addStock',
    takeOut: 'sticksSheet.takeOutStock',
    least: 1,
    fresh: {},
    fields: {
      length: long,
      count: {
        kind: 'count',
        from: 0,
        label: 'sticksSheet.stockCount',
        hint: 'sticksSheet.stockCountHint',
        optional: true,
      },
    },
  },
  kerf: { kind: 'length', scale: 'inches', from: 'from 0', label: 'sticksSheet.kerf' },
  least: { kind: 'length', scale: 'inches', from: 'from 0', label: 'sticksSheet.least' },
} as const satisfies Fields;

export type SticksForm = ReadOf<typeof sticksFields>;

/** What the sheet opens with. */
export const sticksExample: SticksForm = {
  pieces: [
    { length: readLength(`7'-3 1/2"`), count: 6, mark: 'A' },
    { length: readLength(`4'-10"`), count: 8, mark: 'B' },
    { length: readLength(`2'-9 1/4"`), count: 12, mark: 'C' },
  ],
  stock: [{ length: STOCK.length, count: undefined }],
  kerf: KERF.length,
  least: REUSABLE.length,
};

export const jobOf = ({ pieces, stock, kerf, least }: SticksForm, rack: Rack): SticksGiven => ({
  pieces,
  stock,
  kerf,
  minReusable: least,
  ...(rack.length === 0 ? {} : { offcuts: rack }),
});

export const countOf = ({ pieces }: Pick<SticksGiven, 'pieces'>): number =>
  pieces.reduce((sum, { count }) => sum + count, 0);
