/** From a run as given to its joints and pieces, or every fault of it. */
import { type Fault, GivenError } from '../trade/given.ts';
import { KERF, SOCKET } from '../trade/habits.ts';
import { formatLength, type Ticks, ticks } from '../trade/length.ts';
import type { Catalogue, Tray } from './catalogue.ts';
import { type BuiltJoint, isBuilt, resolveJoint } from './joints.ts';
import { notYet } from './notYet.ts';
import { piecesOf } from './pieces.ts';
import type { Face, ResolvedJoint, ResolvedRun, StraightLeg } from './straight.ts';
import type { End, Leg, Run, Support } from './types.ts';

const NONE = ticks(0);

/**
 * Joints and pieces of a run.
 *
 * @throws {GivenError} every fault: what is wrong, what does not hang together, what is not built yet
 */
export function resolveRun(run: Run, catalogue: Catalogue): ResolvedRun {
  const tray = catalogue.get(run.tray);
  const faults: Fault[] = [...notYet(run), ...namesFaults(run)];
  if (tray?.kind !== 'tray') {
    faults.push({
      field: 'tray',
      value: run.tray,
      message: 'the catalogue has no such tray',
      todo: `name one of ${[...catalogue.values()].flatMap((i) => (i.kind === 'tray' ? [i.id] : [])).join(' ')}`,
    });
  }
  const leg = run.legs[0];
  if (faults.length > 0 || tray?.kind !== 'tray' || leg === undefined) throw new GivenError(faults);

  const resolved = resolveLeg(run, leg, tray, catalogue);
  return { run, tray, stock: run.stock ?? tray.length, kerf: run.kerf ?? KERF.length, legs: [resolved] };
}

/** Names that must stand for a leg, and the leg that must stand somewhere. */
function namesFaults({ legs, joints = [], ends = [], supports = [] }: Run): readonly Fault[] {
  const faults: Fault[] = [];
  const bad = (field: string, value: unknown, message: string, todo: string) =>
    faults.push({ field, value, message, todo });
  if (legs.length === 0) bad('legs', [], 'a run has at least one leg', 'give its first leg, from start');
  legs.forEach(({ id, from, length }, k) => {
    if (id === 'start' || id.includes(':')) {
      bad(
        `legs[${k}].id`,
        id,
        'this name has a meaning of its own',
        'name the leg without a colon, and not start',
      );
    }
    if (k === 0 && from !== 'start') {
      bad(`legs[${k}].from`, from, 'the first leg leaves the start', 'write start');
    }
    if (length <= 0) bad(`legs[${k}].length`, length, 'a leg has a length', 'give a length above 0');
  });
  const ids = new Set(legs.map((l) => l.id));
  const known = legs.map((l) => l.id).join(' ');
  for (const [name, list] of Object.entries({ joints, ends, supports })) {
    list.forEach(({ leg }, i) => {
      if (!ids.has(leg)) bad(`${name}[${i}].leg`, leg, 'the run has no such leg', `name one of ${known}`);
    });
  }
  ends.forEach(({ leg }, i) => {
    if (ends.findIndex((e) => e.leg === leg) < i) {
      bad(`ends[${i}].leg`, leg, 'this leg has an end already', 'give one end a leg');
    }
  });
  return faults;
}

function resolveLeg(run: Run, leg: Leg, tray: Tray, catalogue: Catalogue): StraightLeg {
  const faults: Fault[] = [];
  const start = faceOf(run.start.kind, run.start.joint, NONE);
  const given: Pick<End, 'kind' | 'joint' | 'open'> = run.ends?.find((e) => e.leg === leg.id) ?? {
    kind: 'free',
    joint: 'free',
  };
  const end = faceOf(given.kind, given.joint, given.open ?? NONE);

  const numbered = (run.joints ?? [])
    .map((joint, i) => ({ joint, field: `joints[${i}]` }))
    .filter(
      (one): one is { joint: BuiltJoint; field: string } => one.joint.leg === leg.id && isBuilt(one.joint),
    )
    .sort((a, b) => a.joint.at - b.joint.at);
  const joints: ResolvedJoint[] = [];
  numbered.forEach(({ joint, field }, i) => {
    const answer = resolveJoint(joint, `S${i + 1}`, field, tray, catalogue);
    if ('faults' in answer) faults.push(...answer.faults);
    else joints.push(answer);
  });
  faults.push(...supportFaults(run.supports ?? [], leg));
  if (faults.length > 0) throw new GivenError(faults);

  const pieces = piecesOf(leg.id, leg.length, start, joints, end);
  pieces.forEach(({ cut }, i) => {
    if (cut > 0) return;
    // The joint behind the piece is to blame; the last piece has only the joint before it.
    const at = numbered[i] ?? numbered[i - 1];
    const field = at === undefined ? `legs[${run.legs.indexOf(leg)}].length` : `${at.field}.at`;
    faults.push({
      field,
      value: at === undefined ? leg.length : at.joint.at,
      message: `piece ${i + 1} would be ${formatLength(cut)} long`,
      todo:
        at === undefined
          ? 'give the leg more length'
          : 'move the joint so that channel is left on both sides',
    });
  });
  if (faults.length > 0) throw new GivenError(faults);
  const supports = (run.supports ?? []).filter((s) => s.leg === leg.id).sort((a, b) => a.at - b.at);
  return { leg: leg.id, length: leg.length, start, end, joints, pieces, supports };
}

function faceOf(kind: Face['kind'], joint: End['joint'], open: Ticks): Face {
  if (joint === 'expansion') throw new Error('notYet refuses an expansion joint before it comes here');
  return { kind, joint, insertion: joint === 'socketed' ? SOCKET.length : NONE, open };
}

function supportFaults(supports: readonly Support[], leg: Leg): readonly Fault[] {
  return supports.flatMap(({ leg: on, at, way }, i): readonly Fault[] => {
    if (on !== leg.id) return [];
    const off = at < 0 || at > leg.length;
    const plumb = leg.dir === 'U' || leg.dir === 'D';
    return [
      ...(off
        ? [
            {
              field: `supports[${i}].at`,
              value: at,
              message: 'the support is not under the channel',
              todo: `place it between 0 and ${formatLength(leg.length)}`,
            },
          ]
        : []),
      ...(way === 'vertical' && !plumb
        ? [
            {
              field: `supports[${i}].way`,
              value: way,
              message: 'a vertical support holds a leg that goes up or down',
              todo: 'write horizontal',
            },
          ]
        : []),
    ];
  });
}

/**
 * Pieces longer than the stock they are cut from, as faults.
 * Kept apart from resolving: a run may be drawn that cannot be cut.
 */
export function stockFaults({ legs, stock }: ResolvedRun): readonly Fault[] {
  return legs.flatMap(({ length, pieces }, k) =>
    pieces
      .filter(({ cut }) => cut > stock)
      .map(({ id, cut }) => ({
        field: `legs[${k}].length`,
        value: length,
        message: `piece ${id} would be ${formatLength(cut)}, longer than a length of ${formatLength(stock)}`,
        todo: 'put another splice into the leg',
      })),
  );
}
