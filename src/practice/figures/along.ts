/** A run drawn unfolded against the legs that it must show. */
import { inches, type Ticks } from '../../trade/length.ts';
import type { FiguredLeg } from '../figured.ts';
import { alike, notInOrder, sum, text } from './compare.ts';
import { type DrawnLeg, legsIn, placesIn } from './legs.ts';
import type { DrawnFigure } from './shapes.ts';
import { lengthsOn } from './texts.ts';

/** Legs by what is said of them, by the places lettered on them, and by where things stand. */
export function notAlong(legs: readonly FiguredLeg[], figure: DrawnFigure): string | null {
  const unsaid = notInOrder(
    legs.flatMap(({ length, supports, joints }) => [
      length,
      ...joints.map(({ at }) => at),
      ...supports.map(({ at }) => at),
    ]),
    lengthsOn(figure.words),
  );
  if (unsaid !== null) return unsaid;
  const places = legs.flatMap(({ supports, joints }) => [...supports, ...joints]);
  const lettered = placesIn(figure);
  const misplaced = places.find(({ name, at }) => lettered.has(name) && lettered.get(name) !== inches(at));
  if (misplaced !== undefined) return `${misplaced.name} at ${text(misplaced.at)}`;
  const drawn = legsIn(figure);
  if (drawn.length !== legs.length) return `${legs.length} legs`;
  const scale = scaleOf(drawn, legs);
  const wrong = legs.find((leg, i) => !standsAs(drawn[i], leg, scale));
  return wrong === undefined ? null : `a leg of ${text(wrong.length)} with all that stands on it`;
}

/** Px to the inch: by the legs whose ends are marked, or where there is none by the last supports. */
function scaleOf(drawn: readonly DrawnLeg[], legs: readonly FiguredLeg[]): number {
  const pairs = (px: (leg: DrawnLeg) => number | null | undefined, ticks: (leg: FiguredLeg) => Ticks) =>
    drawn.flatMap((one, i) => {
      const [long, leg] = [px(one), legs[i]];
      return long === null || long === undefined || leg === undefined ? [] : [[long, ticks(leg)] as const];
    });
  const ends = pairs(
    ({ length }) => length,
    ({ length }) => length,
  );
  const last = pairs(
    ({ supports }) => supports.at(-1),
    ({ supports, length }) => supports.at(-1)?.at ?? length,
  );
  const measured = ends.length > 0 ? ends : last;
  return sum(measured.map(([px]) => px)) / inches(sum(measured.map(([, ticks]) => ticks)) as Ticks);
}

function standsAs(drawn: DrawnLeg | undefined, leg: FiguredLeg, scale: number): boolean {
  const at = (places: FiguredLeg['supports']) => places.map((one) => one.at);
  return (
    drawn !== undefined &&
    (drawn.lettered === null || drawn.lettered === inches(leg.length)) &&
    (drawn.length === null || alike([drawn.length], [leg.length], scale)) &&
    alike(drawn.supports, at(leg.supports), scale) &&
    alike(drawn.joints, at(leg.joints), scale)
  );
}
