/** A joint of a run with everything filled in: its item, insertions and gap, from the catalogue and the temperatures. */
import { formatLength, inches, type Ticks, ticks } from '../trade/length.ts';
import type { Catalogue, ExpansionSplice, Hinge, Plate, Sleeve, Tray } from './catalogue.ts';
import { halves, placeSplice } from './joints.ts';
import type { ResolvedJoint } from './straight.ts';
import type { Bad } from './tree.ts';
import type { Joint, JointKind } from './types.ts';
import { nameOne } from './wouldDo.ts';

type Pair<T> = readonly [T, T];
type JointItem = Sleeve | Plate | Hinge | ExpansionSplice;
const NONE = ticks(0);

/** What each kind of joint is made with; nothing joins a gap. */
const MADE_WITH: Readonly<Record<JointKind, JointItem['kind'] | null>> = {
  socketed: 'sleeve',
  butt: 'plate',
  hinged: 'hinge',
  expansion: 'expansion',
  gap: null,
};

/** What a joint stands in. */
export interface Where {
  readonly name: string;
  /** Path of the joint, `joints[2]`. */
  readonly field: string;
  /** Channel of the leg; null where it is at fault, and widths are not judged. */
  readonly tray: Tray | null;
  readonly catalogue: Catalogue;
  /** Gap of an expansion splice at the temperature now; null without temperatures, or outside their range. */
  readonly wanted: Ticks | null;
}

/** @returns the joint; null where something of it is at fault (told to `bad`), or its channel is not known */
export function resolveJoint(joint: Joint, where: Where, bad: Bad): ResolvedJoint | null {
  const item = itemOf(joint, where, bad);
  const insertions = insertionsOf(joint, item, where.field, bad);
  const gap = gapOf(joint, where, bad);
  if (insertions === undefined || gap === undefined) return null;
  if (joint.kind === 'gap') return place(joint, where, { item: null, length: NONE, gap });
  if (item === null) return null;
  if (item.kind === 'hinge') return hinge(joint, where, item, insertions);
  if (item.kind === 'expansion') return place(joint, where, { item: item.id, length: item.length, gap });
  const splice =
    item.kind === 'plate'
      ? ({ kind: 'butt', length: item.length, gap } as const)
      : ({ kind: 'socketed', length: item.length, insertions } as const);
  return { ...placeSplice(where.name, joint.at, splice, item.id), given: joint, field: where.field };
}

function itemOf({ kind, item: named }: Joint, { field, tray, catalogue }: Where, bad: Bad): JointItem | null {
  const wanted = MADE_WITH[kind];
  if (wanted === null || kind === 'gap') {
    if (named !== undefined) bad(`${field}.item`, named, 'nothing joins the ends at a gap', 'leave it out');
    return null;
  }
  const id = named ?? tray?.own[kind];
  if (id === undefined) return null;
  const item = catalogue.get(id);
  const wrong = (message: string, todo: string) => bad(`${field}.item`, id, message, todo);
  const names = () => nameOne(catalogue, [wanted], tray?.width ?? null);
  if (item === undefined) wrong('the catalogue has no such item', `${names()}, or leave it out`);
  else if (item.kind !== wanted)
    wrong(`${article(kind)} joint is made with ${made(wanted)}, and this is a ${item.kind}`, names());
  else if (tray !== null && item.width !== tray.width)
    wrong('the item is not of the width it stands in', names());
  else return item as JointItem;
  return null;
}

const made = (wanted: JointItem['kind']) => (wanted === 'expansion' ? 'an expansion splice' : `a ${wanted}`);
const article = (kind: JointKind) => (kind === 'expansion' ? `an ${kind}` : `a ${kind}`);

/** How far each channel goes in; `undefined` where that is at fault. */
function insertionsOf(
  { kind, insertions }: Joint,
  item: JointItem | null,
  field: string,
  bad: Bad,
): Pair<Ticks> | undefined {
  const wrong = (message: string, todo: string) =>
    bad(`${field}.insertions`, insertions?.map(inches), message, todo);
  if (kind !== 'socketed' && kind !== 'hinged') {
    if (insertions === undefined) return [NONE, NONE];
    const what = { butt: 'a butt joint', expansion: 'an expansion splice', gap: 'a gap' }[kind];
    wrong(`nothing goes into ${what}`, 'leave it out, or make it socketed');
    return undefined;
  }
  if (item?.kind !== 'sleeve' && item?.kind !== 'hinge') return insertions ?? [NONE, NONE];
  const [first, second] = insertions ?? [item.insertion, item.insertion];
  const length = item.kind === 'sleeve' ? item.length : ticks(2 * item.takeOut);
  if (first + second <= length) return [first, second];
  wrong(
    `together more than the ${item.kind}, which is ${formatLength(length)} long`,
    'let both ends together go in no farther than its length',
  );
  return undefined;
}

/** The opening that a joint gives or wants; `undefined` where that is at fault. */
function gapOf({ kind, gap }: Joint, { field, wanted }: Where, bad: Bad): Ticks | undefined {
  const wrong = (message: string, todo: string) => bad(`${field}.gap`, gap && inches(gap), message, todo);
  if (kind === 'socketed' || kind === 'hinged') {
    if (gap === undefined) return NONE;
    const what = kind === 'socketed' ? 'sleeve' : 'hinge';
    wrong(`the opening of a ${what} follows from its insertions`, 'give insertions instead');
    return undefined;
  }
  if (kind === 'butt') return gap ?? NONE;
  if (kind === 'gap') {
    if (gap !== undefined && gap > 0) return gap;
    wrong('a gap has a width', 'give the space between the channel ends, above 0');
    return undefined;
  }
  if (gap !== undefined) return gap;
  if (wanted !== null) return wanted;
  wrong(
    'no temperatures tell how wide this expansion splice stands open',
    'give temps with nowF between lowF and highF, or give the gap',
  );
  return undefined;
}

/** Channel ends with a space between them: each gives up half of it. */
function place(
  joint: Joint,
  { name, field }: Where,
  { item, length, gap }: { readonly item: string | null; readonly length: Ticks; readonly gap: Ticks },
): ResolvedJoint {
  const { at } = joint;
  const shares = halves(gap);
  const channelEnds: Pair<Ticks> = [ticks(at - shares[0]), ticks(at + shares[1])];
  return {
    kind: joint.kind === 'gap' ? 'gap' : 'expansion',
    name,
    at,
    item,
    length,
    insertions: [NONE, NONE],
    opening: gap,
    takeOuts: [NONE, NONE],
    shares,
    channelEnds,
    edges: channelEnds,
    given: joint,
    field,
  };
}

/** A hinge stands straight, its faces a take-out from its pivot. */
function hinge(
  joint: Joint,
  { name, field }: Where,
  { id, takeOut }: Hinge,
  insertions: Pair<Ticks>,
): ResolvedJoint {
  const { at } = joint;
  const channelEnds: Pair<Ticks> = [ticks(at - takeOut + insertions[0]), ticks(at + takeOut - insertions[1])];
  return {
    kind: 'hinged',
    name,
    at,
    item: id,
    length: ticks(2 * takeOut),
    insertions,
    opening: ticks(channelEnds[1] - channelEnds[0]),
    takeOuts: [takeOut, takeOut],
    shares: [NONE, NONE],
    channelEnds,
    edges: [ticks(at - takeOut), ticks(at + takeOut)],
    given: joint,
    field,
  };
}
