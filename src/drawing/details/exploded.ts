/** What holds or joins channel, taken apart along its axes, with the list of its parts. */
import type { Fastening } from '../../run/catalogue.ts';
import { jumpersNeeded } from '../../run/jumpers.ts';
import type { ResolvedRun } from '../../run/resolved.ts';
import { inches } from '../../trade/length.ts';
import { shortLength } from '../../trade/shortLength.ts';
import { drawBalloons } from '../balloon.ts';
import { frameOf, MARGIN } from '../frame.ts';
import { Plan } from '../plan.ts';
import { together } from '../spoken.ts';
import type { How } from '../types.ts';
import { type Detail, type DetailGiven, fasteningOf, pick } from './detail.ts';
import { jumperApart, plateApart, sleeveApart } from './jointApart.ts';
import { drawPartsList, type PartRow } from './partsList.ts';
import type { Picture, Room } from './picture.ts';
import { type Held, jointsOf, type PlacedJoint, supportsOf } from './places.ts';
import { seatApart } from './seatApart.ts';

export const APART = ['horizontal', 'vertical', 'sleeve', 'plate', 'jumper'] as const;
export type Apart = (typeof APART)[number];

type Subject =
  | { readonly kind: 'horizontal' | 'vertical'; readonly held: Held }
  | { readonly kind: 'sleeve' | 'plate'; readonly placed: PlacedJoint }
  | { readonly kind: 'jumper' };

interface Named {
  readonly name: string;
  readonly subject: Subject;
}

/** Whether the run meets or crosses something that a jumper goes over. */
const mayNeedJumper = ({ start, legs, fittings }: ResolvedRun): boolean =>
  start.kind !== 'free' ||
  legs.some((l) => l.givenEnd?.kind === 'tray' || l.givenEnd?.kind === 'instrument') ||
  fittings.some(({ item }) => item.kind === 'hinge' || !item.grounding) ||
  legs.some(({ joints }) => joints.some(({ kind }) => kind !== 'socketed' && kind !== 'butt'));

/** Every support and joint by its name. */
function single({ resolved, catalogue }: Pick<DetailGiven, 'resolved' | 'catalogue'>): readonly Named[] {
  const held = supportsOf(resolved).map(
    (one): Named => ({ name: one.support.name, subject: { kind: one.support.way, held: one } }),
  );
  const joined = jointsOf(resolved).flatMap((placed): Named[] => {
    const kind = placed.joint.item === null ? undefined : catalogue.get(placed.joint.item)?.kind;
    return kind === 'sleeve' || kind === 'plate' ? [{ name: placed.name, subject: { kind, placed } }] : [];
  });
  return [...held, ...joined];
}

/** Kinds first, each by the first that there is; then every support and joint by its own name. */
function all(given: Pick<DetailGiven, 'resolved' | 'catalogue'>): readonly Named[] {
  const ones = single(given);
  const kinds = APART.flatMap((name): Named[] => {
    if (name === 'jumper') return mayNeedJumper(given.resolved) ? [{ name, subject: { kind: name } }] : [];
    const first = ones.find(({ subject }) => subject.kind === name);
    return first === undefined ? [] : [{ name, subject: first.subject }];
  });
  return [...kinds, ...ones];
}

export const explodedPlaces = (given: Pick<DetailGiven, 'resolved' | 'catalogue'>): readonly string[] =>
  all(given)
    .map(({ name }) => name)
    .filter((name) => (APART as readonly string[]).includes(name));

export function layExploded(given: DetailGiven, how: How): Detail {
  const { name, subject } = pick(all(given), (one) => one.name, given.of);
  const { form, speak } = how;
  const width = form === 'phone' ? 328 : 660;
  const margin = MARGIN[form];
  const plan = new Plan();
  const say = (key: string, values: Record<string, string | number> = {}) =>
    speak({ say: `detail.${key}`, values });
  const room: Room = { form, width, margin, top: margin + 46 };
  const { rows, picture } = apart(plan, room, given, subject, say);
  const titleAt = picture.bottom + 62;
  const own = (APART as readonly string[]).includes(name) ? '' : ` ${name}`;
  plan.viewTitle([width / 2, titleAt], `${say(`apart-${subject.kind}`)}${own}`, say('apartScale'));
  const numbered = given.balloons === undefined || given.balloons.length === 0;
  const bottom = drawPartsList(plan, rows, {
    width,
    margin,
    top: titleAt + 40,
    numbered,
    heads: [say('listPart'), say('listCount')],
  });
  const height = Math.ceil(bottom + margin);
  const frame = frameOf(form, width, height);
  // Balloons stand in the picture, not in the list.
  plan.keep({ x: 0, y: titleAt - 18, w: width, h: height });
  const balloons = numbered
    ? rows.map(({ part }, i) => ({ number: String(i + 1), at: part }))
    : (given.balloons ?? []);
  const zones = drawBalloons(plan, frame, form, balloons, picture.targets);
  return {
    view: 'exploded',
    width,
    height,
    frame,
    plan,
    zones,
    parts: Object.keys(picture.targets),
    words: together([
      say(`apartWords-${subject.kind}`),
      ...rows.map((row, i) =>
        say(numbered ? 'rowNumbered' : 'row', {
          number: i + 1,
          name: row.size === undefined ? row.name : `${row.name}, ${row.size}`,
          count: row.count,
        }),
      ),
    ]).replaceAll('"', ' in'),
  };
}

export type Spoken = (key: string, values?: Record<string, string | number>) => string;

function apart(
  plan: Plan,
  room: Room,
  { resolved, catalogue, tables }: DetailGiven,
  subject: Subject,
  say: Spoken,
): { readonly rows: readonly PartRow[]; readonly picture: Picture } {
  if (subject.kind === 'horizontal' || subject.kind === 'vertical') {
    const { leg, support } = subject.held;
    const nuts = subject.kind === 'vertical' ? 3 : 2;
    const held = support.hold === 'guide' ? 'guide' : 'clamp';
    return {
      rows: [
        { part: 'strut', name: say('list-strut'), count: 1 },
        { part: 'nut', name: say('list-channelNut'), count: nuts },
        { part: 'channel', name: channelName(leg.tray.width, say), count: 1 },
        { part: held, name: say(`list-${held}`), count: 2 },
        { part: 'washer', name: say('list-washer'), count: nuts },
        { part: 'bolt', name: say('list-bolt'), count: nuts },
      ],
      picture: seatApart(plan, room, { tray: leg.tray, held, centreBolt: subject.kind === 'vertical' }),
    };
  }
  if (subject.kind === 'jumper') {
    const [leg] = resolved.legs;
    const tray = leg?.tray ?? resolved.tray;
    const first = tables === undefined ? undefined : jumpersNeeded(resolved, catalogue, tables)[0];
    const size = first?.size ?? null;
    const fastening = [...catalogue.values()].find(
      (i): i is Fastening => i.kind === 'fastening' && i.hole.name === 'slot',
    );
    return {
      rows: [
        { part: 'bolt', name: say('list-carriage'), size: fastening && boltSize(fastening, say), count: 2 },
        { part: 'washer', name: say('list-washer'), size: fastening && washerSize(fastening, say), count: 2 },
        {
          part: 'channel',
          name: say('list-ends'),
          size: fastening ? holeSize(fastening, say) : say('slot'),
          count: 2,
        },
        { part: 'lug', name: say('list-lug'), count: 2 },
        {
          part: 'jumper',
          name: say('list-jumper'),
          size: size === null ? say('sizeByDevice') : say('copper', { size }),
          count: 1,
        },
        { part: 'nut', name: say('list-flangeNut'), count: 2 },
      ],
      picture: jumperApart(plan, room, { tray, fastening }),
    };
  }
  if (!('placed' in subject)) throw new Error('no splice');
  const { joint, leg } = subject.placed;
  const item = joint.item === null ? undefined : catalogue.get(joint.item);
  if (item?.kind !== 'sleeve' && item?.kind !== 'plate') throw new Error(`${joint.name}: no splice`);
  const fastening = fasteningOf(item.fastened.fastening, catalogue);
  const { count } = item.fastened;
  const fastened: readonly PartRow[] = [
    { part: 'bolt', name: say(`list-bolt-${fastening.bolt.head}`), size: boltSize(fastening, say), count },
    { part: 'washer', name: say('list-washer'), size: washerSize(fastening, say), count },
    { part: 'nut', name: say('list-nut'), count },
  ];
  return {
    rows: [
      { part: 'channel', name: channelName(leg.tray.width, say), size: holeSize(fastening, say), count: 2 },
      { part: item.kind, name: say(`list-${item.kind}`), size: shortLength(item.length), count: 1 },
      ...fastened,
    ],
    picture:
      item.kind === 'sleeve'
        ? sleeveApart(plan, room, { tray: leg.tray, item, fastening })
        : plateApart(plan, room, { tray: leg.tray, item, fastening }),
  };
}

const channelName = (width: Parameters<typeof shortLength>[0], say: Spoken) =>
  say('list-channel', { width: inches(width) });
const boltSize = ({ bolt }: Fastening, say: Spoken) =>
  say('boltSize', { diameter: shortLength(bolt.diameter), length: shortLength(bolt.length) });
const washerSize = ({ washer }: Fastening, say: Spoken) =>
  say('washerSize', { outside: shortLength(washer.outside) });
const holeSize = ({ hole }: Fastening, say: Spoken) =>
  say(`hole-${hole.name}`, { width: shortLength(hole.width) });
