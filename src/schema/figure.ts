/**
 * A figure of a procedure: a run, a view, and the part of the run that the view shows. Numbers in the procedure's text
 * are places (`{insertion}`) filled from that same part, so that text and figure cannot disagree.
 */
import type { DetailGiven, DetailView } from '../drawing/details/detail.ts';
import { detailViews } from '../drawing/details/details.ts';
import { paperPalette } from '../drawing/palette.ts';
import { drawPiece, type PieceGiven, pieceParts } from '../drawing/piece.ts';
import type { RunGiven } from '../drawing/runGiven.ts';
import { drawSplice, type SpliceGiven, spliceParts } from '../drawing/splice.ts';
import { drawStrip, type StripGiven } from '../drawing/strip.ts';
import { render } from '../drawing/svg.ts';
import type { Balloon, Drawing, How } from '../drawing/types.ts';
import { type RunView, runViews } from '../drawing/views.ts';
import type { Catalogue, Fastened, Fastening, Tray } from '../run/catalogue.ts';
import { supportLoads } from '../run/loads.ts';
import { resolveRun } from '../run/resolve.ts';
import type { ResolvedRun } from '../run/resolved.ts';
import type { ResolvedJoint, RigidJoint } from '../run/straight.ts';
import type { RunTables } from '../run/tables.ts';
import type { Run } from '../run/types.ts';
import type { RunUsual } from '../run/usual.ts';
import { type Fault, GivenError } from '../trade/given.ts';
import { formatLength } from '../trade/length.ts';
import { inchNumber } from '../trade/shortLength.ts';
import type { Figure } from './procedure.ts';

/**
 * What a figure shows, ready to be drawn: the subject that its view takes, the texts of its measures, and the parts
 * that a balloon may point at.
 */
export type Shown = {
  readonly tray: Tray;
  readonly facts: Readonly<Record<string, string>>;
  readonly parts: readonly string[];
} & (
  | { readonly view: 'strip'; readonly given: StripGiven }
  | { readonly view: 'splice'; readonly given: SpliceGiven }
  | { readonly view: 'piece'; readonly given: PieceGiven }
  | { readonly view: 'detail'; readonly given: DetailGiven; readonly lay: DetailView['lay'] }
  | { readonly view: 'whole'; readonly given: RunGiven; readonly lay: RunView['lay'] }
);

/**
 * @param usual   what a run takes where it gives none: the site's, where it has adopted its own
 * @param tables  bonding and fill are judged by them; figures of neither need none
 * @throws {GivenError} faults of the run (fields of the run), or `of` when the run has no such part
 */
export function shownBy(
  { view, of }: Pick<Figure, 'view' | 'of'>,
  run: Run,
  catalogue: Catalogue,
  usual: RunUsual,
  tables?: RunTables,
): Shown {
  const resolved = resolveRun(run, catalogue, usual);
  if (isPlain(view)) return views[view](resolved, of, catalogue);
  const detail = detailViews.find((v) => v.view === view);
  if (detail !== undefined) return detailShown(detail, { resolved, catalogue, tables, of });
  const whole = runViews.find((v) => v.view === view);
  if (whole !== undefined) return wholeShown(whole, { resolved, catalogue, tables });
  throw new Error(`no view ${view}`);
}

/** The figure as a drawing, with a balloon for each numbered part. */
export function drawShown(shown: Shown, balloons: readonly Balloon[], how: How): Drawing {
  switch (shown.view) {
    case 'strip':
      return drawStrip({ ...shown.given, balloons }, how);
    case 'splice':
      return drawSplice({ ...shown.given, balloons }, how);
    case 'piece':
      return drawPiece({ ...shown.given, balloons }, how);
    case 'detail':
      return render(shown.lay({ ...shown.given, balloons }, how), how);
    case 'whole':
      return render(shown.lay({ ...shown.given, ...(balloons.length > 0 ? { balloons } : {}) }, how), how);
  }
}

/** How a figure is laid out when only its parts are asked for. */
const UNSPOKEN: How = { form: 'desk', palette: paperPalette, speak: ({ say }) => say };

/** One place of the run drawn large; it says itself which places and parts it has. */
function detailShown({ lay }: DetailView, given: DetailGiven): Shown {
  const { parts } = lay(given, UNSPOKEN);
  const held = supportLoads(given.resolved).find(({ support }) => support.name === given.of);
  const facts: Record<string, string> =
    held === undefined || held.lb === null ? {} : { load: String(Math.round(held.lb * 10) / 10) };
  return { view: 'detail', tray: given.resolved.tray, facts, parts, given, lay };
}

/** The whole run: its start, legs, ends, joints and supports by name. */
function wholeShown({ lay }: RunView, given: RunGiven): Shown {
  const { legs, tray } = given.resolved;
  const parts = [
    'start',
    ...legs.flatMap(({ leg }) => [`leg-${leg}`, `end-${leg}`]),
    ...legs.flatMap(({ joints }) => joints).map((_, i) => `s${i + 1}`),
    ...legs.flatMap((l) => l.supports.map(({ name }) => `support-${name}`)),
  ];
  return { view: 'whole', tray, facts: {}, parts, given, lay };
}

type Show = (run: ResolvedRun, of: string | undefined, catalogue: Catalogue) => Shown;
type Plain = 'strip' | 'splice' | 'piece';
const isPlain = (view: Figure['view']): view is Plain => Object.hasOwn(views, view);

const views: Readonly<Record<Plain, Show>> = {
  strip: ({ legs, tray, stock, kerf }, of) => {
    const leg = pick(legs, (l) => l.leg, of);
    const parts = [
      ...['start', 'end', 'whole', 'left-over'],
      ...leg.pieces.map((p) => `piece-${p.number}`),
      ...leg.joints.map((j) => j.name.toLowerCase()),
    ];
    return {
      view: 'strip',
      tray,
      parts,
      given: { leg, stock, kerf },
      facts: { run: formatLength(leg.length), cut: formatLength(leg.pieces.at(-1)?.cut ?? leg.length) },
    };
  },

  splice: ({ legs, tray }, of, catalogue) => {
    const joint = pick(
      legs.flatMap((l) => l.joints.filter(isRigid)),
      (j) => j.name,
      of,
    );
    const facts = {
      insertion: inchNumber(joint.insertions[0]),
      opening: inchNumber(joint.opening),
      splice: inchNumber(joint.length),
    };
    const given = spliceOf(joint, tray, catalogue);
    return { view: 'splice', tray, parts: spliceParts[joint.kind], given, facts };
  },

  piece: ({ legs, tray }, of) => {
    const { leg, piece } = pick(
      legs.flatMap((l) => l.pieces.map((p) => ({ leg: l, piece: p }))),
      (p) => p.piece.id,
      of,
    );
    const facts = {
      insertion: inchNumber(piece.ends[0].insertion),
      clear: formatLength(piece.clear),
      cut: formatLength(piece.cut),
    };
    return {
      view: 'piece',
      tray,
      parts: pieceParts,
      given: { leg, piece: piece.number, cut: 'shown' },
      facts,
    };
  },
};

const isRigid = (joint: ResolvedJoint): joint is RigidJoint =>
  joint.kind === 'socketed' || joint.kind === 'butt';

/** A joint with the item it is made with, and what fastens it; a resolved joint of a catalogue has both. */
function spliceOf(joint: RigidJoint, tray: Tray, catalogue: Catalogue): SpliceGiven {
  const item = joint.item === null ? undefined : catalogue.get(joint.item);
  if (joint.kind === 'socketed' && item?.kind === 'sleeve') {
    return { joint, tray, item, fastening: fasteningOf(item.fastened, catalogue) };
  }
  if (joint.kind === 'butt' && item?.kind === 'plate') {
    return { joint, tray, item, fastening: fasteningOf(item.fastened, catalogue) };
  }
  throw new Error(`${joint.name}: its item does not make a ${joint.kind} joint`);
}

function fasteningOf({ fastening: id }: Fastened, catalogue: Catalogue): Fastening {
  const fastening = catalogue.get(id);
  if (fastening?.kind === 'fastening') return fastening;
  throw new GivenError([
    { field: 'fastened', value: id, message: 'no such fastening', todo: 'mend the catalogue' },
  ]);
}

function pick<T>(all: readonly T[], name: (one: T) => string, of: string | undefined): T {
  const found = of === undefined ? all[0] : all.find((one) => name(one) === of);
  if (found !== undefined) return found;
  const fault: Fault = {
    field: 'of',
    ...(of === undefined ? {} : { value: of }),
    message: 'the run has no such part',
    todo: `name one of ${all.map(name).join(', ')}`,
  };
  throw new GivenError([fault]);
}
