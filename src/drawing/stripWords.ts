/** The words of a strip: everything its lines say. */
import type { Ticks } from '../trade/length.ts';
import { spoken, together } from './spoken.ts';
import type { StripGiven } from './stripGiven.ts';
import type { How } from './types.ts';

export function stripWords({ leg, kerf }: StripGiven, left: Ticks | undefined, { speak }: How): string {
  const say = (key: string, values: Record<string, string | number> = {}) =>
    speak({ say: `drawing.${key}`, values });
  const length = (t: Ticks) => spoken(t, speak);
  return together([
    say('stripWhole', { length: length(leg.length) }),
    say(`from-${leg.start.kind}`),
    ...leg.pieces.map(({ number, cut }) => say('stripPiece', { number, cut: length(cut) })),
    ...leg.joints.map(({ name, at, kind, opening, insertions: [a, b] }) =>
      kind === 'socketed'
        ? say('stripSleeve', {
            name,
            at: length(at),
            first: length(a),
            second: length(b),
            gap: length(opening),
          })
        : say(opening === 0 ? 'stripButt' : 'stripButtGap', {
            name,
            at: length(at),
            ...(opening === 0 ? {} : { gap: length(opening) }),
          }),
    ),
    ...(leg.supports.length === 0
      ? []
      : [say('stripSupports', { places: leg.supports.map(({ at }) => length(at)).join(', ') })]),
    leg.end.kind === 'instrument' ? say('stripOpen', { length: length(leg.end.open) }) : undefined,
    left === undefined
      ? undefined
      : say('stripLeft', { kerf: length((kerf ?? 0) as Ticks), left: length(left) }),
  ]);
}
