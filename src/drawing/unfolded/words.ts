/** The words of an unfolded run: every leg with its pieces, joints and supports. */
import type { ResolvedLeg } from '../../run/resolved.ts';
import { ticks } from '../../trade/length.ts';
import { directionWords, fittingWords } from '../direction.ts';
import { endWords } from '../isometric/words.ts';
import type { RunGiven } from '../runGiven.ts';
import { jointNames } from '../runNames.ts';
import { heard, spoken, together } from '../spoken.ts';
import type { How } from '../types.ts';

/** Most supports of one leg that are said one by one. */
const SAID = 12;

export function unfoldedWords(
  { resolved, findings = [], tags }: RunGiven,
  { speak }: Pick<How, 'speak'>,
): string {
  const names = jointNames(resolved);
  const say = (key: string, values: Record<string, string | number> = {}) =>
    speak({ say: `rundrawing.${key}`, values });
  return heard(
    together([
      say('unfoldedWords'),
      ...resolved.legs.flatMap((leg) => {
        const by = fittingWords(leg, speak);
        const values = { leg: leg.leg, way: directionWords(leg, speak), length: spoken(leg.length, speak) };
        return [
          by === undefined ? say('unfoldedFirst', values) : say('unfoldedLeg', { ...values, by }),
          ...leg.pieces.map(({ id, cut }) => say('piece', { id, cut: spoken(cut, speak) })),
          ...leg.joints.map((joint) =>
            say(`joint-${joint.kind}`, { name: names.get(joint) ?? joint.name, at: spoken(joint.at, speak) }),
          ),
          supportWords(leg, { speak }),
          endWords(leg, tags?.ends?.[leg.leg], { speak }),
        ];
      }),
      ...findings.map((f, i) => say('noteWords', { number: i + 1, text: speak(f.say) })),
    ]),
  );
}

function supportWords({ leg, supports }: ResolvedLeg, { speak }: Pick<How, 'speak'>): string | undefined {
  const [first, last] = [supports[0], supports.at(-1)];
  if (first === undefined || last === undefined) return undefined;
  const say = (key: string, values: Record<string, string | number>) =>
    speak({ say: `rundrawing.${key}`, values });
  if (supports.length <= SAID) {
    return say('supportsAt', {
      places: supports.map(({ name, at }) => say('supportAt', { name, at: spoken(at, speak) })).join(', '),
    });
  }
  const widest = Math.max(...supports.slice(1).map(({ at }, i) => at - (supports[i]?.at ?? 0)));
  return say('supportsFrom', {
    leg,
    count: supports.length,
    first: first.name,
    last: last.name,
    from: spoken(first.at, speak),
    to: spoken(last.at, speak),
    apart: spoken(ticks(widest), speak),
  });
}
