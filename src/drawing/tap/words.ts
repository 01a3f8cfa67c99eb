/** The words of a tapped run: its legs, what was set down on them, what was found. The targets have words of their own. */
import type { ResolvedLeg } from '../../run/resolved.ts';
import { fromInches } from '../../trade/length.ts';
import { directionWords, fittingWords } from '../direction.ts';
import { heard, spoken, together } from '../spoken.ts';
import type { How } from '../types.ts';
import type { TapGiven } from './given.ts';

/** Most legs that are said one by one. */
const SAID = 12;

export function tapWords(
  { resolved, tap, chosen, found = [] }: TapGiven,
  marks: ReadonlyMap<ResolvedLeg, string>,
  { speak }: Pick<How, 'speak'>,
): string {
  const say = (key: string, values: Readonly<Record<string, string | number>> = {}) =>
    speak({ say: `tap.${key}`, values });
  const markOf = (id: string) => {
    const leg = resolved.byId.get(id);
    return leg === undefined ? id : (marks.get(leg) ?? id);
  };
  const at = (inch: number | null) => (inch === null ? say('all') : spoken(fromInches(inch), speak));
  const legs = resolved.legs.slice(0, SAID).map((leg) => {
    const values = {
      leg: marks.get(leg) ?? leg.leg,
      way: directionWords(leg, speak),
      length: spoken(leg.length, speak),
    };
    const by = fittingWords(leg, speak);
    return by === undefined
      ? speak({ say: 'rundrawing.unfoldedFirst', values })
      : speak({ say: 'rundrawing.unfoldedLeg', values: { ...values, by } });
  });
  const places = chosen.map((one) =>
    say(tap.kind === 'faults' ? 'chosenFault' : `chosen-${one.what}`, {
      leg: markOf(one.leg),
      at: at(one.at),
    }),
  );
  return heard(
    together([
      say(tap.kind === 'faults' ? 'wordsFaults' : 'wordsPlace'),
      ...legs,
      places.length === 0 ? say('noneChosen') : say('chosen', { places: places.join(', ') }),
      ...found.map(({ note, leg, at: place }) => say('foundAt', { note, leg: markOf(leg), at: at(place) })),
    ]),
  );
}
