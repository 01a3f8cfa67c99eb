/** Directions and fittings of a run in words. */
import type { ResolvedLeg } from '../run/resolved.ts';
import type { Speak } from '../trade/say.ts';

/** `east`, or the azimuth and the slope. */
export function directionWords({ given: { dir } }: Pick<ResolvedLeg, 'given'>, speak: Speak): string {
  if (typeof dir === 'string') return speak({ say: `rundrawing.dir-${dir}` });
  const { azimuthDeg, slopeDeg } = dir;
  const slope = slopeDeg > 0 ? 'rising' : slopeDeg < 0 ? 'falling' : 'level';
  return speak({
    say: `rundrawing.dir-${slope}`,
    values:
      slope === 'level'
        ? { azimuth: degrees(azimuthDeg) }
        : { azimuth: degrees(azimuthDeg), slope: degrees(Math.abs(slopeDeg)) },
  });
}

const degrees = (n: number): string => String(Math.round(n * 100) / 100);

/** The fitting that a leg leaves by: `flat elbow 90°, left`; `undefined` on the first leg. */
export function fittingWords(
  { fittingBefore: fitting, turn, way }: Pick<ResolvedLeg, 'fittingBefore' | 'turn' | 'way'>,
  speak: Speak,
): string | undefined {
  if (fitting === null) return undefined;
  const { item } = fitting;
  const say = (key: string, values: Record<string, string> = {}) =>
    speak({ say: `rundrawing.${key}`, values });
  if (item.kind === 'elbow')
    return say(`elbow-${turn === 'none' ? item.turn : turn}`, { angle: degrees(item.angleDeg) });
  if (item.kind === 'hinge') return say('hinged', { angle: degrees(fitting.turnDeg) });
  if (item.kind === 'reducer') return say(`reducer-${item.hand}`);
  return say(`${item.kind}-${way}`);
}
