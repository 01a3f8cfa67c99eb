/** What a job card says of a run: gathered, equal things together, and cut to what one sheet of paper holds. */
import type { RunFile } from '../../run/edit/file.ts';
import type { Finding } from '../../run/inspect/finding.ts';
import type { ResolvedFitting, ResolvedLeg, ResolvedRun } from '../../run/resolved.ts';
import type { Takeoff } from '../../run/takeoff.ts';
import type { JointKind } from '../../run/types.ts';
import type { Ticks } from '../../trade/length.ts';

export interface CutRow {
  readonly pieces: readonly string[];
  readonly cut: Ticks;
}
export interface SpliceRow {
  readonly leg: string;
  readonly name: string;
  readonly at: Ticks;
  readonly kind: JointKind;
  readonly opening: Ticks;
}
export interface SupportRow {
  readonly leg: string;
  readonly way: 'horizontal' | 'vertical';
  readonly supports: readonly { readonly name: string; readonly at: Ticks; readonly hold: string }[];
}

export interface JobCard {
  readonly cuts: readonly CutRow[];
  readonly splices: readonly SpliceRow[];
  /** The two lists stand side by side, and the figure is smaller. */
  readonly wide: boolean;
  readonly supports: readonly SupportRow[];
  readonly jumpers: Takeoff['jumpers'];
  readonly findings: readonly Finding[];
  readonly fittings: readonly { readonly item: string; readonly count: number }[];
  /** Tasks that the run demands of the crew, in the order of the job. */
  readonly needs: readonly string[];
  readonly steps: readonly CardStep[];
  /** Who builds it; empty rows where nobody is named. */
  readonly crew: readonly string[];
  /** Rows that found no room, by list. */
  readonly left: {
    readonly cuts: number;
    readonly splices: number;
    readonly supports: number;
    readonly jumpers: number;
    readonly findings: number;
  };
}
export type CardStep = 'hang' | 'drop' | 'cut' | 'fit' | 'join' | 'gap' | 'bond' | 'cables';

/** Most rows of what stands across the sheet. */
const MOST = { supports: 3, supportsIfRoom: 6, perSupportRow: 8, jumpers: 4, findings: 2, crew: 3 } as const;

/** What the parts of the card take, mm; styles/run.css sets them so. Measured on paper, a line more than it takes. */
const MM = {
  sheet: 256,
  /** Head, warning, heading, lines under it, titles, hold point, signatures, title block, space between. */
  fixed: 88,
  finding: 9,
  support: 5.6,
  jumper: 3,
  left: 5,
  step: 6.4,
  task: 1.6,
  crew: 6.4,
  /** Title and head of a list beside the figure, and a row of it. */
  list: 10.5,
  row: 6.4,
  /** The figure is never smaller. */
  figure: 48,
} as const;

export function jobCard(
  resolved: ResolvedRun,
  takeoff: Takeoff,
  findings: readonly Finding[],
  { run, crew }: Pick<RunFile, 'run' | 'crew'>,
): JobCard {
  const cuts = grouped(resolved.legs);
  const splices = resolved.legs.flatMap(({ leg, joints }) =>
    joints.map(({ name, at, kind, opening }): SpliceRow => ({ leg, name, at, kind, opening })),
  );
  const supports = supportRows(resolved.legs);
  const jumpersShown = takeoff.jumpers.slice(0, MOST.jumpers);
  const findingsShown = findings.slice(0, MOST.findings);
  const needs = needsOf(resolved, takeoff);
  const fitted = new Set<string>(resolved.fittings.map(({ item }) => `fitting:${item.id}`));
  const steps = stepsOf(resolved, takeoff, run);
  const people = crewOf(crew);
  const taken =
    MM.fixed +
    findingsShown.length * MM.finding +
    jumpersShown.length * MM.jumper +
    MM.left +
    steps.length * MM.step +
    needs.length * MM.task +
    people.length * MM.crew;
  const roomBeside = (rows: number) => MM.sheet - taken - rows * MM.support;
  // As many rows of supports as leave room for every cut and splice, and for the figure.
  let rows = Math.min(supports.length, MOST.supportsIfRoom);
  const allFit = (room: number) => {
    const shown = beside(room, cuts, splices);
    return room >= MM.figure && shown.cuts.length === cuts.length && shown.splices.length === splices.length;
  };
  while (rows > MOST.supports && !allFit(roomBeside(rows))) rows--;
  const supportsShown = supports.slice(0, rows);
  const lists = beside(roomBeside(rows), cuts, splices);
  const { cuts: cutsShown, splices: splicesShown } = lists;
  const count = (rows: readonly SupportRow[]) => rows.reduce((sum, row) => sum + row.supports.length, 0);
  return {
    ...lists,
    supports: supportsShown,
    jumpers: jumpersShown,
    findings: findingsShown,
    fittings: takeoff.hardware.flatMap(({ item, count: n }) =>
      fitted.has(item) ? [{ item, count: n }] : [],
    ),
    needs,
    steps,
    crew: people,
    left: {
      cuts: pieces(cuts) - pieces(cutsShown),
      splices: splices.length - splicesShown.length,
      supports: resolved.legs.reduce((sum, l) => sum + l.supports.length, 0) - count(supportsShown),
      jumpers: takeoff.jumpers.length - jumpersShown.length,
      findings: findings.length - findingsShown.length,
    },
  };
}

/** Cuts and splices beside the figure: one list over the other, or, where that is not enough, each in a column of its own. */
function beside(
  room: number,
  cuts: readonly CutRow[],
  splices: readonly SpliceRow[],
): Pick<JobCard, 'cuts' | 'splices' | 'wide'> {
  const lists = splices.length > 0 ? 2 : 1;
  if (cuts.length + splices.length <= Math.floor((room - lists * MM.list) / MM.row)) {
    return { cuts, splices, wide: false };
  }
  const each = Math.max(2, Math.floor((room - MM.list) / MM.row));
  return { cuts: cuts.slice(0, each), splices: splices.slice(0, each), wide: true };
}

function crewOf(crew: string): readonly string[] {
  const people = crew.split(/[,;]\s*/).filter((one) => one.trim() !== '');
  return people.length === 0 ? ['', ''] : people.slice(0, MOST.crew);
}

const pieces = (rows: readonly CutRow[]) => rows.reduce((sum, row) => sum + row.pieces.length, 0);

/** Pieces of one length in one row, in order of travel. */
function grouped(legs: readonly ResolvedLeg[]): readonly CutRow[] {
  const rows = new Map<Ticks, string[]>();
  for (const { id, cut } of legs.flatMap((leg) => leg.pieces)) {
    const row = rows.get(cut);
    if (row === undefined) rows.set(cut, [id]);
    else row.push(id);
  }
  return [...rows].map(([cut, ids]) => ({ cut, pieces: ids }));
}

/** A row a leg, parted where one leg has more supports than a row holds. */
function supportRows(legs: readonly ResolvedLeg[]): readonly SupportRow[] {
  return legs.flatMap(({ leg, supports, plumb }) => {
    const rows: SupportRow[] = [];
    for (let i = 0; i < supports.length; i += MOST.perSupportRow) {
      rows.push({
        leg,
        way: plumb ? 'vertical' : 'horizontal',
        supports: supports.slice(i, i + MOST.perSupportRow).map(({ name, at, hold }) => ({ name, at, hold })),
      });
    }
    return rows;
  });
}

const FITTING_TASK: Readonly<Record<string, string>> = {
  flat: 'T08a',
  inside: 'T08b',
  outside: 'T08b',
  tee: 'T08c',
  cross: 'T08c',
  reducer: 'T08d',
  hinge: 'T08e',
};
const taskOf = ({ item }: Pick<ResolvedFitting, 'item'>): string =>
  FITTING_TASK[item.kind === 'elbow' ? item.turn : item.kind] ?? 'T08';

/** Tasks by what stands on the run: its supports, joints, fittings, start, jumpers and cables. */
export function needsOf(resolved: ResolvedRun, takeoff: Pick<Takeoff, 'jumpers'>): readonly string[] {
  const { legs, fittings, start, run } = resolved;
  const joints = legs.flatMap((leg) => leg.joints);
  const supports = legs.flatMap((leg) => leg.supports);
  const has = (task: string, when: boolean) => (when ? [task] : []);
  const ends = run.ends ?? [];
  return [
    ...new Set([
      ...has(
        'T03',
        supports.some(({ way }) => way === 'horizontal'),
      ),
      ...has(
        'T04',
        supports.some(({ way }) => way === 'vertical'),
      ),
      'T05',
      'T06',
      ...has(
        'T07',
        joints.some(({ kind }) => kind === 'socketed' || kind === 'butt'),
      ),
      ...fittings.map(taskOf),
      ...has(
        'T08e',
        joints.some(({ kind }) => kind === 'hinged'),
      ),
      ...has('T09', start.kind === 'ladder'),
      ...has(
        'T10',
        joints.some(({ kind }) => kind === 'expansion' || kind === 'gap') ||
          start.joint === 'expansion' ||
          ends.some(({ joint }) => joint === 'expansion'),
      ),
      ...has('T11', takeoff.jumpers.length > 0),
      ...has('T12', (run.cables ?? []).length > 0),
    ]),
  ].sort();
}

function stepsOf(
  { legs, fittings }: ResolvedRun,
  { jumpers, gaps }: Takeoff,
  run: RunFile['run'],
): readonly CardStep[] {
  const supports = legs.flatMap((leg) => leg.supports);
  const joints = legs.flatMap((leg) => leg.joints);
  const has = (step: CardStep, when: boolean): readonly CardStep[] => (when ? [step] : []);
  return [
    ...has(
      'hang',
      supports.some(({ way }) => way === 'horizontal'),
    ),
    ...has(
      'drop',
      supports.some(({ way }) => way === 'vertical'),
    ),
    'cut',
    ...has('fit', fittings.length > 0),
    ...has(
      'join',
      joints.some(({ kind }) => kind === 'socketed' || kind === 'butt' || kind === 'hinged'),
    ),
    ...has('gap', gaps.length > 0),
    ...has('bond', jumpers.length > 0),
    ...has('cables', (run.cables ?? []).length > 0),
  ];
}
