/** The parts of a leg that may be at fault, each with what a person would measure or see of it. */
import type { ResolvedLeg } from '../../run/resolved.ts';
import type { ResolvedJoint } from '../../run/straight.ts';
import type { Jumper } from '../../run/types.ts';
import { inches, type Ticks } from '../../trade/length.ts';
import { fittingWords } from '../direction.ts';
import { spoken } from '../spoken.ts';
import { type Laned, type On, said, saidLength, target } from './on.ts';

export function partsOf(on: On): readonly Laned[] {
  const { leg } = on;
  return [
    wholeLeg(on),
    ...supports(on),
    ...spans(on),
    ...bound(on),
    ...(leg.fittingAfter === null ? [] : [faceBefore(on)]),
    ...joints(on),
    ...gapSides(on),
    ...steps(on),
  ];
}

/** What runs over the leg is looked at as a whole. */
function wholeLeg(on: On): Laned {
  const cables = on.resolved.cablesOver(on.leg).map(({ id, count, odIn, use, type, side }) => {
    const what = said(on, 'cable', {
      id,
      count,
      od: odIn,
      type,
      use: on.speak({ say: `rundrawing.use-${use}` }),
    });
    return side !== undefined && on.leg.given.barrier === true ? said(on, `cable-${side}`, { what }) : what;
  });
  const words = [
    said(on, 'wholeLeg', { leg: on.mark }),
    ...(cables.length === 0 ? [] : [said(on, 'over', { cables: cables.join(', ') })]),
    ...(on.leg.given.barrier === true ? [said(on, 'barrier')] : []),
  ].join(' ');
  return target(on, 'leg', null, { letters: on.mark, words, lane: 'left' });
}

export function supports(on: On): readonly Laned[] {
  return on.leg.supports.map(({ name, at, hold }) => {
    const words = said(on, `support-${hold}`, { name, at: saidLength(inches(at), on) });
    return target(on, 'support', inches(at), { letters: name, words, lane: 'left' });
  });
}

function spans(on: On): readonly Laned[] {
  return on.leg.lines.flatMap((line) =>
    line.supports.slice(1).map((behind, i) => {
      const before = line.supports[i] ?? behind;
      const length = inches(behind.at) - inches(before.at);
      return target(on, 'span', inches(before.at) + length / 2, {
        letters: `${before.name}–${behind.name}`,
        words: said(on, 'span', { from: before.name, to: behind.name, length: saidLength(length, on) }),
        lane: 'left',
      });
    }),
  );
}

export function joints(on: On): readonly Laned[] {
  return on.leg.joints.map((joint, i) => {
    const name = on.names[i] ?? joint.name;
    const at = inches(joint.at);
    return target(on, 'joint', at, {
      letters: name,
      words: [said(on, `joint-${joint.kind}`, { name, at: saidLength(at, on) }), ...measured(joint, on)].join(
        ' ',
      ),
      lane: 'right',
      elsewhere: { 'cut-in-hole': inches(joint.channelEnds[0]) },
    });
  });
}

/** The two channel ends at a gap: each wants its own support. */
function gapSides(on: On): readonly Laned[] {
  return on.leg.joints.flatMap((joint, i) =>
    joint.kind !== 'gap'
      ? []
      : joint.channelEnds.map((end) => {
          const values = { name: on.names[i] ?? joint.name, at: saidLength(inches(end), on) };
          return target(on, 'face', inches(end), {
            letters: said(on, 'letters-face'),
            words: said(on, 'gapSide', values),
            lane: 'left',
          });
        }),
  );
}

function measured({ kind, insertions, opening, given }: ResolvedJoint, on: On): readonly string[] {
  const length = (t: Ticks) => spoken(t, on.speak);
  const goesIn = kind === 'socketed' || kind === 'hinged';
  return [
    ...(goesIn
      ? [said(on, 'inserted', { before: length(insertions[0]), behind: length(insertions[1]) })]
      : []),
    ...(kind === 'hinged' ? [] : [said(on, 'opening', { opening: length(opening) })]),
    ...(given?.hole === 'large' ? [said(on, 'largeHole')] : []),
    ...bonded(given ?? {}, on),
  ];
}

interface Bonding {
  readonly jumper?: Jumper | undefined;
  readonly bare?: boolean | undefined;
}

/** The jumper that is fitted, and faces that were not scraped. */
function bonded({ jumper, bare }: Bonding, on: On): readonly string[] {
  return [
    jumper === undefined || jumper === null ? said(on, 'noJumper') : said(on, 'jumper', { size: jumper }),
    ...(bare === false ? [said(on, 'notBare')] : []),
  ];
}

/** What stands at the leg's two ends: start or fitting, and the end of a last leg. */
export function bound(on: On): readonly Laned[] {
  return on.leg.fittingAfter === null ? [begins(on), ends(on)] : [begins(on)];
}

function begins(on: On): Laned {
  const { leg, mark, resolved } = on;
  const by = fittingWords(leg, on.speak);
  if (by !== undefined) {
    return target(on, 'fitting', 0, {
      letters: said(on, 'letters-fitting'),
      words: [said(on, 'fitting', { by, leg: mark }), ...bonded(leg.given, on)].join(' '),
      lane: 'right',
      // What is wrong with the fitting stands at its working point, a missing support at its face.
      elsewhere: { 'fitting-unsupported': inches(leg.start.takeOut) },
    });
  }
  const { start } = resolved;
  const bonding = { jumper: start.jumper ?? leg.given.jumper, bare: start.bare ?? leg.given.bare };
  return target(on, 'start', 0, {
    letters: said(on, 'letters-start'),
    words: [said(on, `start-${start.kind}`), ...bonded(bonding, on)].join(' '),
    lane: 'right',
  });
}

/** The face of the fitting that follows; the fitting itself is a target of the leg behind it. */
function faceBefore(on: On): Laned {
  const at = inches(on.leg.length) - inches(on.leg.end.takeOut);
  return target(on, 'face', at, {
    letters: said(on, 'letters-face'),
    words: said(on, 'face', { leg: on.mark, at: saidLength(at, on) }),
    lane: 'right',
    elsewhere: { 'cut-in-hole': inches(on.leg.pieces.at(-1)?.to ?? on.leg.length) },
  });
}

function ends(on: On): Laned {
  const { leg, mark } = on;
  const kind = endKind(leg);
  const open = inches(leg.end.open);
  return target(on, 'end', inches(leg.length), {
    letters: said(on, 'letters-end'),
    words: [
      said(on, `end-${kind}`, { leg: mark }),
      ...(open > 0 ? [said(on, 'openTo', { length: saidLength(open, on) })] : []),
      ...bonded(leg.givenEnd ?? {}, on),
    ].join(' '),
    lane: 'right',
    elsewhere: { 'cut-in-hole': inches(leg.pieces.at(-1)?.to ?? leg.length) },
  });
}

const endKind = ({ end }: ResolvedLeg) =>
  end.kind === 'instrument' || end.kind === 'tray' ? end.kind : 'free';

/** Where someone steps on the channel. */
function steps(on: On): readonly Laned[] {
  const marks = on.resolved.run.marks?.filter(({ leg }) => leg === on.leg.leg) ?? [];
  return marks.map(({ at }) =>
    target(on, 'step', inches(at), {
      letters: said(on, 'letters-step'),
      words: said(on, 'step', { at: saidLength(inches(at), on) }),
      lane: 'left',
    }),
  );
}
