/**
 * Jumpers: missing, too small, or where none is needed. A jumper that is not needed is not held against a size; where no
 * device is named over the leg, none that is needed is judged.
 */
import { type JumperPlace, jumperSize } from '../jumpers.ts';
import type { ResolvedLeg, ResolvedRun } from '../resolved.ts';
import { JUMPER_PLACES } from '../sources.ts';
import type { Found, Rule } from './finding.ts';

const found = ({ leg, at, given, size, reason }: JumperPlace): Found => ({
  leg: leg.leg,
  at,
  measured: given,
  limit: reason === null ? null : size,
  values: { ...(given === null ? {} : { given }), ...(size === null ? {} : { size }) },
});

const namesDevice = (leg: ResolvedLeg, resolved: ResolvedRun): boolean =>
  resolved.cablesOver(leg).some(({ deviceA }) => deviceA !== undefined);

const missing: Rule = {
  id: 'jumper-missing',
  source: () => JUMPER_PLACES,
  find: ({ jumpers, resolved }) =>
    jumpers
      .filter(({ leg, reason, given }) => reason !== null && given === null && namesDevice(leg, resolved))
      .map((place) => ({
        ...found(place),
        variant: `${place.reason?.replace(' ', '-')}`,
        todo: place.size === null ? 'unsized' : 'sized',
      })),
};

const needless: Rule = {
  id: 'jumper-needless',
  source: () => JUMPER_PLACES,
  find: ({ jumpers }) => jumpers.filter(({ reason, given }) => reason === null && given !== null).map(found),
};

const small: Rule = {
  id: 'jumper-small',
  source: () => JUMPER_PLACES,
  find: ({ jumpers, resolved, tables }) =>
    jumpers
      .filter(({ reason, given, holds }) => reason !== null && given !== null && holds === false)
      .map((place) => {
        const [source = JUMPER_PLACES] = jumperSize(place.leg, resolved, tables).sources;
        return { ...found(place), source };
      }),
};

export const bondingRules: readonly Rule[] = [missing, needless, small];
