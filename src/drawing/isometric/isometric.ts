/** A whole run in space: true isometric, to one scale, with its legs, supports, joints, ends and what is wrong with it. */
import { frameOf, MARGIN, zoneOf } from '../frame.ts';
import { drawNotes } from '../notes.ts';
import { Plan } from '../plan.ts';
import { Room } from '../room.ts';
import type { RunGiven } from '../runGiven.ts';
import { runNotes } from '../runNotes.ts';
import type { Point } from '../shapes.ts';
import { render, type Sheet } from '../svg.ts';
import type { Drawing, How } from '../types.ts';
import { CROWDED, dimensionLegs, nameLegs, type Stood, stepBalloons } from './balloons.ts';
import { drawCorners } from './corners.ts';
import { letterSupports, nameInstruments, nameJoints, nameStubs } from './letters.ts';
import { markFindings } from './noted.ts';
import { paint } from './paint.ts';
import { type Scene, sceneOf } from './scene.ts';
import type { Setting } from './setting.ts';
import { SIZES_OF } from './sizes.ts';
import { project } from './space.ts';
import { isometricWords } from './words.ts';

/** How generously a sheet is laid out; the next is tried where something that must stand found no room. */
interface Level {
  /** Letters: 1 as many as fit, 2 every other one, 0 none. */
  readonly letters: 0 | 1 | 2;
  /** Ground at the foot for title and north arrow. */
  readonly band: boolean;
  /** Px more over and under the route. */
  readonly more: number;
}

const LEVELS: readonly Level[] = [
  { letters: 1, band: false, more: 0 },
  { letters: 1, band: true, more: 0 },
  { letters: 2, band: true, more: 20 },
  { letters: 0, band: true, more: 40 },
  { letters: 0, band: true, more: 140 },
  { letters: 0, band: true, more: 400 },
];
const BAND = 54;

export function drawIsometric(given: RunGiven, how: How): Drawing {
  return render(layIsometric(given, how), how);
}

export function layIsometric(given: RunGiven, how: How): Sheet {
  const scene = sceneOf(given.resolved, how.form, given.phantom);
  let made: Attempt | undefined;
  // Where many legs stand close, letters would leave no room for their names.
  const first = scene.route.legs.length > CROWDED ? 3 : 0;
  for (const level of LEVELS.slice(first)) {
    made = attempt(given, scene, how, level);
    if (made.stands) break;
  }
  return (made as Attempt).sheet;
}

interface Attempt {
  readonly sheet: Sheet;
  readonly stands: boolean;
}

function attempt(given: RunGiven, scene: Scene, how: How, level: Level): Attempt {
  const { form, speak } = how;
  const sizes = SIZES_OF[form];
  const { width, pad } = sizes;
  const margin = MARGIN[form];
  const { box } = scene.route;
  const high = Math.max(sizes.least, box.h) + 2 * (pad.y + level.more) + (level.band ? BAND : 0);
  const bounds = { x: margin + 5, y: margin + 5, w: width - 2 * margin - 10, h: high - 10 };
  const [dx, dy] = [
    (width - box.w) / 2 - box.x,
    margin + pad.y + level.more + Math.max(0, (sizes.least - box.h) / 2) - box.y,
  ];
  const plan = new Plan();
  const setting: Setting = {
    given,
    scene,
    plan,
    room: new Room(bounds),
    place: (p): Point => {
      const [x, y] = project(p);
      return [x + dx, y + dy];
    },
    sizes,
    form,
    speak,
  };
  paint(plan, setting.room, scene, setting.place);
  const cornered = drawCorners(setting, level.band);
  nameInstruments(setting);
  // Long lines find few places, so they come first; the phone has none, and lengths stand by the balloons.
  const dimensioned = dimensionLegs(setting);
  const marked = markFindings(setting);
  const balloons = () => ({ stepped: stepBalloons(setting), legs: nameLegs(setting, dimensioned) });
  const early = form === 'phone' ? balloons() : undefined;
  nameStubs(setting);
  const lettered = letterSupports(setting, level.letters);
  const named = nameJoints(setting, level.letters);
  const { stepped, legs } = early ?? balloons();
  const notes = notesOf(given, scene, { lettered, named, legs }, how);
  const height = Math.ceil(drawNotes(plan, notes, { form, width, margin, top: margin + high }) + margin);
  const frame = frameOf(form, width, height);
  const zones = (of: ReadonlyMap<string, Point>) =>
    Object.fromEntries([...of].map(([name, at]) => [name, zoneOf(frame, at)]));
  return {
    stands: cornered && marked.all && stepped.all && legs.all,
    sheet: {
      view: 'isometric',
      width,
      height,
      frame,
      plan,
      zones: zones(given.balloons === undefined ? legs.balloons : stepped.balloons),
      noted: zones(marked.triangles),
      words: isometricWords(given, scene.route.longer > 0, how),
    },
  };
}

/** Most lengths that the notes say; with more they are left to the list of legs, and to the words. */
const UNSAID = 8;

interface Done {
  readonly lettered: number;
  readonly named: number;
  readonly legs: Stood;
}

/** What the run comes to, what is left out, and the lengths that found no place. */
function notesOf(
  given: RunGiven,
  { route, each }: Scene,
  { lettered, named, legs }: Done,
  { speak }: How,
): readonly string[] {
  const { resolved } = given;
  const supports = resolved.legs.reduce((sum, l) => sum + l.supports.length, 0);
  const joints = resolved.legs.reduce((sum, l) => sum + l.joints.length, 0);
  const note = (key: string, values: Record<string, string | number> = {}) =>
    speak({ say: `rundrawing.${key}`, values });
  return [
    ...runNotes(resolved, speak),
    ...(route.longer > 0 ? [note('longer')] : []),
    ...(each.struts > 1 ? [note('eachStrut', { each: each.struts, count: supports })] : []),
    ...(lettered < supports && lettered > 0 ? [note('lettered', { lettered, count: supports })] : []),
    ...(lettered === 0 && supports > 0 ? [note('unlettered', { count: supports })] : []),
    ...(named < joints ? [note('unnamed', { named, count: joints })] : []),
    ...(legs.unsaid.length > UNSAID
      ? [note('unsaid', { count: legs.unsaid.length })]
      : legs.unsaid.map(({ mark, length }) => note('legLong', { leg: mark, length }))),
  ];
}
