/** Drawings of every view and form, on easy and on awkward subjects. */

import { layExtract } from '../../src/drawing/extract.ts';
import { paperPalette } from '../../src/drawing/palette.ts';
import { layPiece } from '../../src/drawing/piece.ts';
import { laySection } from '../../src/drawing/section.ts';
import { laySplice, spliceParts } from '../../src/drawing/splice.ts';
import { laySticks } from '../../src/drawing/sticks/sticks.ts';
import { layStrip } from '../../src/drawing/strip.ts';
import { render, type Sheet } from '../../src/drawing/svg.ts';
import { layTape } from '../../src/drawing/tape.ts';
import type { Form, How } from '../../src/drawing/types.ts';
import type { Splice } from '../../src/run/joints.ts';
import { spliceStraightRun } from '../../src/run/spliceStraight.ts';
import { readLength as L, ticks } from '../../src/trade/length.ts';
import { item, resolved } from '../run/practice.ts';
import { speak } from './english.ts';

export const forms = ['phone', 'desk', 'paper'] as const;
export const how = (form: Form): How => ({ form, palette: paperPalette, speak });

const sleeve: Splice = { kind: 'socketed', length: L('10 1/8'), insertions: [L(5), L(5)] };
const plate: Splice = { kind: 'butt', length: L(6), gap: L(0) };

export function straight(length: string | number, splice: Splice = sleeve) {
  const given = {
    length: typeof length === 'number' ? ticks(length) : L(length),
    stock: L(`20'`),
    kerf: L('1/8'),
  };
  return { ...given, leg: spliceStraightRun({ ...given, splice }).result.leg };
}

const numbered = (parts: readonly string[]) => parts.map((at, i) => ({ number: String(i + 1), at }));

function spliceOf(width: 2 | 4 | 6, joint: Record<string, unknown>, balloons = true) {
  const run = resolved(`30'`, { tray: `card-${width}`, joints: [{ leg: '1', at: `15'`, ...joint }] });
  const made = run.legs[0]?.joints[0];
  if (made?.kind !== 'socketed' && made?.kind !== 'butt') throw new Error('no splice');
  const { tray } = run;
  const shown = balloons ? numbered(spliceParts[made.kind]) : [];
  return made.kind === 'butt'
    ? {
        joint: made,
        tray,
        item: item(`card-${width}-plate`, 'plate'),
        fastening: item('plate-fastener', 'fastening'),
        balloons: shown,
      }
    : {
        joint: made,
        tray,
        item: item(`card-${width}-sleeve`, 'sleeve'),
        fastening: item('splice-fastener', 'fastening'),
        balloons: shown,
      };
}

function legOf(length: string, rest: Record<string, unknown>) {
  const [leg] = resolved(length, rest).legs;
  if (leg === undefined) throw new Error('no leg');
  return leg;
}

const joint = (kind: string, at: string, rest = {}) => ({ leg: '1', kind, at, ...rest });
const tape = (reading: string, printed: boolean) => (h: How) => layTape({ reading: L(reading), printed }, h);

/** Name of the subject, and how it is laid out. */
export const subjects: Readonly<Record<string, (how: How) => Sheet>> = {
  'strip of four pieces': (h) =>
    layStrip({ ...straight(`63'-7 1/2"`), balloons: numbered(['piece-2', 's2', 'left-over', 'start']) }, h),
  'strip of one piece': (h) => layStrip(straight(`7'-3 5/8"`), h),
  'strip of whole lengths': (h) => layStrip(straight(`60'-0 1/4"`), h),
  'strip of many': (h) => layStrip(straight(`245'-3"`), h),
  'strip of very many': (h) => layStrip(straight(`699'-11 15/16"`), h),
  'strip of plates': (h) => layStrip(straight(`47'-3"`, plate), h),
  'strip with a short last piece': (h) => layStrip(straight(`40'-5 3/8"`), h),
  'strip from ladder to instrument': (h) =>
    layStrip(
      {
        leg: legOf(`24'-8 1/2"`, {
          start: { kind: 'ladder', joint: 'socketed' },
          ends: [{ leg: '1', kind: 'instrument', joint: 'free', open: `1'-6"` }],
          joints: [joint('socketed', `15'`), joint('butt', `20'`, { gap: '1/8' })],
          supports: [`1'-6"`, `7'`, `12'-6"`, `18'`, `23'`].map((at) => ({
            leg: '1',
            at,
            way: 'horizontal',
            hold: 'clamp',
          })),
        }),
      },
      h,
    ),
  'strip between two trays': (h) =>
    layStrip(
      {
        leg: legOf(`12'`, {
          start: { kind: 'tray', joint: 'butt' },
          ends: [{ leg: '1', kind: 'tray', joint: 'socketed' }],
        }),
      },
      h,
    ),
  'sleeve, 2 in': (h) => laySplice(spliceOf(2, { kind: 'socketed' }), h),
  'sleeve, 4 in': (h) => laySplice(spliceOf(4, { kind: 'socketed' }), h),
  'sleeve, 6 in': (h) => laySplice(spliceOf(6, { kind: 'socketed' }), h),
  'sleeve, ends touching': (h) =>
    laySplice(spliceOf(4, { kind: 'socketed', insertions: ['5 1/16', '5 1/16'] }), h),
  'sleeve, one end short': (h) =>
    laySplice(spliceOf(4, { kind: 'socketed', insertions: ['5', '3 15/16'] }), h),
  'plate, 2 in, ends meet': (h) => laySplice(spliceOf(2, { kind: 'butt' }), h),
  'plate, 4 in, a gap': (h) => laySplice(spliceOf(4, { kind: 'butt', gap: '1/16' }), h),
  'plate, 6 in, a gap': (h) => laySplice(spliceOf(6, { kind: 'butt', gap: '1/8' }), h),
  'piece between sleeves': (h) =>
    layPiece(
      {
        leg: legOf(`30'`, { joints: [joint('socketed', `8'`), joint('socketed', `19'-3 1/2"`)] }),
        piece: 2,
        balloons: numbered(['measure', 'first-mark', 'second-end']),
      },
      h,
    ),
  'piece from a sleeve to its free end': (h) =>
    layPiece(
      { leg: legOf(`30'`, { joints: [joint('socketed', `24'-7 3/8"`)] }), piece: 2, insertion: 'hidden' },
      h,
    ),
  'piece from a socket to a plate': (h) =>
    layPiece(
      {
        leg: legOf(`30'`, {
          start: { kind: 'ladder', joint: 'socketed' },
          joints: [joint('butt', `9'`, { gap: '1/8' })],
        }),
        piece: 1,
      },
      h,
    ),
  'piece from a wall to an instrument': (h) =>
    layPiece(
      {
        leg: legOf(`19'-11 15/16"`, {
          start: { kind: 'free', joint: 'butt' },
          ends: [{ leg: '1', kind: 'instrument', joint: 'free', open: 6 }],
        }),
        piece: 1,
      },
      h,
    ),
  'piece with its cut': (h) =>
    layPiece(
      {
        leg: legOf(`30'`, { joints: [joint('socketed', `8'`), joint('socketed', `19'-3 11/16"`)] }),
        piece: 2,
        cut: 'shown',
        measured: 'middles',
      },
      h,
    ),
  'piece that fits unbroken': (h) =>
    layPiece({ leg: legOf(`3'`, { joints: [joint('socketed', `2'`)] }), piece: 2 }, h),
  'sticks of one plan': (h) =>
    laySticks(
      {
        kerf: L('1/8'),
        lengths: [
          { fromIn: 61.5, offcut: true, pieces: [{ in: 60, mark: '1-1' }], leftIn: 1.375 },
          { fromIn: 240, offcut: false, pieces: [{ in: 120, mark: 'north' }, { in: 119.875 }], leftIn: 0 },
          ...Array.from({ length: 3 }, () => ({
            fromIn: 240,
            offcut: false,
            pieces: [{ in: 100 }, { in: 100 }, { in: 3 }],
            leftIn: 36.625,
          })),
        ],
      },
      h,
    ),
  'sticks of many lengths': (h) =>
    laySticks(
      {
        kerf: L('1/8'),
        lengths: Array.from({ length: 130 }, (_, k) => ({
          fromIn: k < 20 ? 126.4375 + (k % 2) : k < 60 ? 120 : 240,
          offcut: k < 20,
          pieces: [{ in: 7.5 + Math.floor(k / 2), mark: `a piece of run ${k}` }, { in: 4.25 }],
          leftIn: (k < 20 ? 126.4375 + (k % 2) : k < 60 ? 120 : 240) - 12 - Math.floor(k / 2),
        })),
      },
      h,
    ),
  'tape at 63 ft 7 1/2 in': tape(`63'-7 1/2"`, true),
  'tape at 7 ft 3 5/8 in': tape(`7'-3 5/8"`, false),
  'tape just past a foot': tape(`8'-0 1/16"`, false),
  'tape just short of a foot': tape(`7'-11 15/16"`, true),
  'tape near its hook': tape(`0'-0 13/16"`, true),
  'tape at a sixteenth': tape(`0'-0 1/16"`, false),
  'extract of a drawing': (h) =>
    layExtract(
      {
        sheet: 960,
        bays: [L(`13'-11 1/2"`), L(`10'-10 1/2"`), L(`12'-11 1/2"`)],
        elevations: { channel: '120.35', steel: '117.95', stand: '109.00' },
        revisions: [
          { id: 'F', change: 'lowered', issued: false },
          { id: 'E', change: 'support', issued: true },
          { id: 'D', change: 'width', issued: true },
        ],
      },
      h,
    ),
  'section of nine cables': (h) =>
    laySection(
      {
        tray: item('card-4', 'tray'),
        cables: [
          { odIn: 0.6, count: 8 },
          { odIn: 0.75, count: 1 },
        ],
      },
      h,
    ),
  'section of many kinds': (h) =>
    laySection(
      {
        tray: { ...item('card-6', 'tray'), bottom: 'solid' },
        cables: [
          { odIn: 1.05, count: 2 },
          { odIn: 0.72, count: 4 },
          { odIn: 0.41, count: 6 },
        ],
      },
      h,
    ),
  'section heaped over its legs': (h) =>
    laySection({ tray: item('card-2', 'tray'), cables: [{ odIn: 0.9, count: 7 }] }, h),
  'section of one thick cable': (h) =>
    laySection({ tray: item('card-6', 'tray'), cables: [{ odIn: 2.4, count: 1 }] }, h),
  'section of an empty channel': (h) => laySection({ tray: item('card-2', 'tray'), cables: [] }, h),
};

export const every = Object.entries(subjects).flatMap(([name, lay]) =>
  forms.map((form) => [`${name}, ${form}`, form, lay] as const),
);

export const drawn = (lay: (h: How) => Sheet, form: Form) => render(lay(how(form)), how(form));
