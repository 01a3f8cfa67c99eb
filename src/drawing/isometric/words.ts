/** The words of an isometric: the way of every leg, its joints, the supports, the ends, what is wrong. */
import { directionWords, fittingWords } from '../direction.ts';
import type { RunGiven } from '../runGiven.ts';
import { jointNames } from '../runNames.ts';
import { runNotes } from '../runNotes.ts';
import { heard, spoken, together } from '../spoken.ts';
import type { How } from '../types.ts';

/** @param longer  whether short legs are drawn longer than to scale */
export function isometricWords(given: RunGiven, longer: boolean, { speak }: How): string {
  const { resolved, findings = [], tags } = given;
  const names = jointNames(resolved);
  const say = (key: string, values: Record<string, string | number> = {}) =>
    speak({ say: `rundrawing.${key}`, values });
  const supports = resolved.legs.flatMap((l) => l.supports);
  const [first, last] = [supports[0], supports.at(-1)];
  return heard(
    together([
      say(longer ? 'isometricLonger' : 'isometricWords'),
      ...resolved.legs.flatMap((leg) => {
        const by = fittingWords(leg, speak);
        const from =
          tags?.start ??
          say(`from-${leg.start.kind === 'ladder' || leg.start.kind === 'tray' ? leg.start.kind : 'free'}`);
        const way = directionWords(leg, speak);
        const length = spoken(leg.length, speak);
        return [
          by === undefined
            ? say('firstLeg', { leg: leg.leg, way, length, from })
            : say('nextLeg', { leg: leg.leg, way, length, by, from: leg.parent?.leg ?? '' }),
          ...leg.joints.map((joint) =>
            say(`joint-${joint.kind}`, { name: names.get(joint) ?? joint.name, at: spoken(joint.at, speak) }),
          ),
          endWords(leg, tags?.ends?.[leg.leg], { speak }),
        ];
      }),
      first === undefined || last === undefined
        ? say('noSupports')
        : supports.length === 1
          ? say('oneSupport', { first: first.name })
          : say('supports', { count: supports.length, first: first.name, last: last.name }),
      ...runNotes(resolved, speak)
        .slice(3)
        .map((n) => `${n[0]?.toUpperCase()}${n.slice(1)}.`),
      ...findings.map((f, i) => say('noteWords', { number: i + 1, text: speak(f.say) })),
    ]),
  );
}

/** What a last leg ends at; nothing where a fitting follows. */
export function endWords(
  leg: RunGiven['resolved']['legs'][number],
  tag: string | undefined,
  { speak }: Pick<How, 'speak'>,
): string | undefined {
  if (leg.fittingAfter !== null) return undefined;
  const say = (key: string, values: Record<string, string> = {}) =>
    speak({ say: `rundrawing.${key}`, values });
  const { kind, open } = leg.end;
  if (kind === 'instrument') {
    const what = tag ?? say('theInstrument');
    return open > 0
      ? say('endsShort', { leg: leg.leg, what, length: spoken(open, speak) })
      : say('endsAt', { leg: leg.leg, what });
  }
  if (kind === 'tray' || kind === 'ladder')
    return say('endsAt', { leg: leg.leg, what: tag ?? say('theTray') });
  return say('endsFree', { leg: leg.leg });
}
