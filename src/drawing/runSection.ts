/** A leg of a run across, seen along the travel: its cables packed to scale, its barrier, and how full it is. */
import { type FillOver, fillOver } from '../run/fillOver.ts';
import type { ResolvedLeg } from '../run/resolved.ts';
import type { RunCable } from '../run/types.ts';
import { figure } from '../trade/figure.ts';
import { GivenError } from '../trade/given.ts';
import { inches } from '../trade/length.ts';
import type { Speak } from '../trade/say.ts';
import { frameOf, LETTERS, MARGIN } from './frame.ts';
import { fitText } from './glyphs.ts';
import { type Laid, layCables } from './packCables.ts';
import { Plan, SIZES } from './plan.ts';
import type { RunGiven } from './runGiven.ts';
import { legMarks } from './runNames.ts';
import { cutCables, cutChannel, decimals, measureChannel, pileOf, scaleOf, stand } from './section.ts';
import { heard, spoken, together } from './spoken.ts';
import type { Sheet } from './svg.ts';
import type { Form, How } from './types.ts';

const LAYOUT: Readonly<Record<Form, { width: number; most: number; tall: number }>> = {
  phone: { width: 328, most: 184, tall: 130 },
  desk: { width: 480, most: 330, tall: 180 },
  paper: { width: 480, most: 330, tall: 180 },
};

/** Most cables that are drawn one by one. */
const DRAWN = 140;

interface Side {
  /** Left edge and width of what the cables lie in, inches from the left wall. */
  readonly from: number;
  readonly wide: number;
  readonly laid: readonly Laid[];
}

/** @throws {GivenError} `leg` names no leg of the run */
export function layRunSection(given: RunGiven, how: How): Sheet {
  const { form, speak } = how;
  const leg = legOf(given);
  const { tray } = leg;
  const cables = given.resolved.cablesOver(leg);
  const { width, most, tall } = LAYOUT[form];
  const margin = MARGIN[form];
  const { sides, left } = packed(leg, cables);
  const pile = pileOf(sides.flatMap((s) => s.laid));
  const px = scaleOf(tray, pile, { most, tall });
  const standing = stand(tray, pile, px, { width, margin });
  const { cx, bottom, over } = standing;
  const plan = new Plan();
  const inside = cutChannel(plan, standing);
  if (leg.given.barrier === true) {
    plan.rect({ x: cx - 2, y: inside.y, w: 4, h: inside.h }, { pen: 'edge', fill: 'sheet', part: 'barrier' });
  }
  for (const { from, laid } of sides) cutCables(plan, laid, { ...inside, x: inside.x + from * px }, px);
  measureChannel(plan, inside, standing, margin);
  const mark = legMarks(given.resolved).get(leg) ?? leg.leg;
  const say = (key: string, values: Record<string, string | number> = {}) =>
    speak({ say: `rundrawing.${key}`, values });
  plan.viewTitle(
    [cx, bottom + 36],
    say('sectionOf', { leg: mark }),
    speak({ say: `drawing.bottom-${tray.bottom}` }),
  );

  const fills = fillLines(leg, given, speak);
  const legend = [
    ...cables.map((cable, i) =>
      say(cable.use === 'air' ? 'cableAir' : 'cable', {
        letter: LETTERS[i % LETTERS.length] ?? '',
        count: cable.count,
        od: decimals(cable.odIn),
        id: cable.id,
      }),
    ),
    ...left.map((i) => say('noRoom', { letter: LETTERS[i % LETTERS.length] ?? '' })),
    ...(cables.length === 0 ? [say('noCables')] : []),
  ];
  const room = width - 2 * margin - 24;
  const size = SIZES.note;
  const lines = [
    ...Plan.lines(
      fills.map((f) => fitText(f, size, room)),
      room,
      size,
    ),
    ...Plan.lines(
      legend.map((l) => fitText(l, size, room)),
      room,
      size,
    ),
  ];
  const top = bottom + 78;
  plan.line('dimension', [margin, top], [width - margin, top]);
  lines.forEach((text, i) => {
    plan.text([margin + 12, top + 22 + i * 20], text, {
      size,
      anchor: 'start',
      part: 'legend',
      weight: i === 0 ? 700 : 650,
    });
  });
  const height = Math.ceil(top + 14 + lines.length * 20 + margin);
  return {
    view: 'section',
    width,
    height,
    frame: frameOf(form, width, height),
    plan,
    zones: {},
    words: heard(
      together([
        say('sectionWords', {
          leg: leg.leg,
          width: spoken(tray.width, speak),
          depth: spoken(tray.depth, speak),
        }),
        speak({ say: `drawing.bottomWords-${tray.bottom}` }),
        leg.given.barrier === true ? say('barrierWords') : undefined,
        ...cables.map((c) =>
          say('cableWords', { id: c.id, count: c.count, od: decimals(c.odIn), use: say(`use-${c.use}`) }),
        ),
        ...left.map((i) => say('noRoomWords', { id: cables[i]?.id ?? '' })),
        cables.length === 0 ? `${say('noCables')}.` : undefined,
        ...fills.map((f) => `${f}.`),
        over > 0 ? speak({ say: 'drawing.overRim' }) : undefined,
      ]),
    ),
  };
}

/** The leg that is asked for, else the one that is fullest by its table, else by area. */
function legOf({ resolved, tables, leg: wanted }: RunGiven): ResolvedLeg {
  if (wanted !== undefined) {
    const found = resolved.byId.get(wanted);
    if (found !== undefined) return found;
    throw new GivenError([
      {
        field: 'leg',
        value: wanted,
        message: 'the run has no such leg',
        todo: `name one of ${[...resolved.byId.keys()].join(' ')}`,
      },
    ]);
  }
  const fullness = (leg: ResolvedLeg): number => {
    if (tables === undefined) return 0;
    return Math.max(
      0,
      ...fillOver(leg, resolved, tables).map((row) => row.answer?.result.fraction ?? shareOf(row)),
    );
  };
  return resolved.legs.reduce((best, leg) => (fullness(leg) > fullness(best) ? leg : best));
}

/** Where no table gives a limit: a hair of the area, so that some cable goes before none. */
const shareOf = ({ answer }: FillOver): number =>
  answer === null ? 0 : (answer.result.areaIn2 + (answer.result.sumOfDiametersIn ?? 0)) * 1e-6;

/** Cables laid into the channel, or into both sides of its barrier; `left` are those wider than what they would lie in. */
function packed(
  leg: ResolvedLeg,
  cables: readonly RunCable[],
): { readonly sides: readonly Side[]; readonly left: readonly number[] } {
  const width = inches(leg.tray.width);
  const half = width / 2 - 0.03;
  const barrier = leg.given.barrier === true;
  const places = barrier
    ? ([
        ['left', 0, half],
        ['right', width / 2 + 0.03, half],
      ] as const)
    : ([[undefined, 0, width]] as const);
  const left: number[] = [];
  let drawn = 0;
  const sides = places.map(([side, from, wide]): Side => {
    const kinds = cables.map((cable, kind) => {
      const here = side === undefined || (cable.side ?? 'left') === side;
      const fits = cable.odIn <= wide;
      if (here && !fits) left.push(kind);
      const count = here && fits ? Math.max(0, Math.min(cable.count, DRAWN - drawn)) : 0;
      drawn += count;
      return { od: fits ? cable.odIn : 0, count };
    });
    return { from, wide, laid: layCables(wide, kinds) };
  });
  return { sides, left };
}

/** `0.39 of 2.5 in², within`, with a barrier one a side; else that it is for the engineer. */
function fillLines(leg: ResolvedLeg, { resolved, tables }: RunGiven, speak: Speak): readonly string[] {
  if (tables === undefined) return [];
  const drawn = resolved.cablesOver(leg).reduce((sum, c) => sum + c.count, 0);
  return [
    ...fillOver(leg, resolved, tables).flatMap((row) => {
      const said = fillLine(row, speak);
      return said === undefined
        ? []
        : [
            row.side === undefined
              ? said
              : speak({ say: `rundrawing.side-${row.side}`, values: { fill: said } }),
          ];
    }),
    ...(drawn > DRAWN
      ? [speak({ say: 'rundrawing.someDrawn', values: { drawn: DRAWN, count: drawn } })]
      : []),
  ];
}

/** Two decimals, unless they would hide on which side of a limit it lies. */
function two(value: number, limit?: number): string {
  const rounded = Math.round(value * 100) / 100;
  return limit !== undefined && rounded === limit && value !== limit ? figure(value) : String(rounded);
}

function fillLine({ answer }: FillOver, speak: Speak): string | undefined {
  if (answer === null) return undefined;
  const { areaIn2, allowedIn2, within, refer, fraction, sumOfDiametersIn, allowedIn } = answer.result;
  const say = (key: string, values: Record<string, string | number>) =>
    speak({ say: `rundrawing.${key}`, values });
  const verdict = within === null ? '' : speak({ say: `rundrawing.${within ? 'within' : 'notWithin'}` });
  if (refer && within === null) return say('fillRefer', { area: two(areaIn2) });
  if (fraction !== null && sumOfDiametersIn !== undefined && areaIn2 > 0) {
    return say('fillBoth', { share: two(fraction, 1), verdict });
  }
  if (allowedIn2 !== null && areaIn2 > 0) {
    return say('fill', { area: two(areaIn2, allowedIn2), allowed: figure(allowedIn2), verdict });
  }
  const sum = sumOfDiametersIn ?? 0;
  return say('fillSingles', { sum: two(sum, allowedIn ?? 0), allowed: figure(allowedIn ?? 0), verdict });
}
