/** Places, parts and findings of a run, as its page and its job card name them. */
import type { Catalogue } from '../../run/catalogue.ts';
import type { RunFile } from '../../run/edit/file.ts';
import type { Finding } from '../../run/inspect/finding.ts';
import type { FittingItem, ResolvedRun } from '../../run/resolved.ts';
import type { Takeoff } from '../../run/takeoff.ts';
import type { Fault } from '../../trade/given.ts';
import { fromInches, roundTo, ticks } from '../../trade/length.ts';
import { measure, measureText } from '../calculators/measure.ts';
import type { Settings } from '../settings.ts';
import type { SiteKey, Tell } from '../speak.ts';
import { LISTS } from './fields.ts';
import { type Long, longAs } from './lengths.ts';
import { fittingWords } from './words.ts';

type NeededJumper = Takeoff['jumpers'][number];

/** `At LAD-2`, `At FT-204`, `Leg 2 at 3'-0", expansion splice`. */
export function jumperPlace(
  { leg, atIn, reason }: Pick<NeededJumper, 'leg' | 'atIn' | 'reason'>,
  { start }: Pick<ResolvedRun, 'start'>,
  { tags, run }: Pick<RunFile, 'tags' | 'run'>,
  tell: Tell,
  long: Long,
): string {
  if (reason === 'start') {
    return tell('yourRun.atTag', { tag: tags.start || tell(`yourRun.kind-${start.kind}`) });
  }
  if (reason === 'end') {
    const kind = run.ends?.find((end) => end.leg === leg)?.kind ?? 'free';
    return tell('yourRun.atTag', { tag: tags.ends[leg] || tell(`yourRun.kind-${kind}`) });
  }
  const why = reason.replaceAll(' ', '-') as 'hinged' | 'expansion' | 'gap' | 'not-identified' | 'not-bare';
  return tell('yourRun.jumperAt', {
    leg,
    at: long(fromInches(atIn)),
    why: tell(`yourRun.reason-${why}`),
  });
}

export function hardwareWords(item: string, catalogue: Catalogue, tell: Tell): string {
  if (!item.startsWith('fitting:')) return tell(`yourRun.part-${item}` as SiteKey);
  const id = item.slice('fitting:'.length);
  const found = catalogue.get(id);
  if (found === undefined) return id;
  if (found.kind === 'expansion') return tell('yourRun.fitting-expansion');
  return fittingWords(found as FittingItem, tell);
}

/** Where a finding stands. */
export function findingPlace({ leg, at }: Pick<Finding, 'leg' | 'at'>, tell: Tell, long: Long): string {
  return at === null
    ? tell('yourRun.wholeLeg', { leg })
    : tell('yourRun.placed', { leg, at: long(ticks(Math.round(at))) });
}

/** A measured value or a limit in its unit. */
export function measureWords(
  value: Finding['measured'],
  unit: Finding['unit'],
  settings: Settings,
  tell: Tell,
): string {
  if (typeof value !== 'number') return value ?? '–';
  if (unit === 'in') return longAs(settings, tell)(roundTo(fromInches(value), 64));
  return measureText(measure(unit === 'in2' ? 'in2' : 'plain', value), settings, tell);
}

/** Tags that are given, as the figures letter them. */
export const tagsOf = ({ tags }: Pick<RunFile, 'tags'>) => ({
  ...(tags.start === '' ? {} : { start: tags.start }),
  ends: Object.fromEntries(Object.entries(tags.ends).filter(([, tag]) => tag !== '')),
});

/** `Leg 2, length: …`, where the page can say it; else the field as the file has it. */
export function faultWords({ field, message, todo }: Fault, tell: Tell): string {
  const [, list, k, name] = /^(\w+)\[(\d+)\](?:\.(\w+))?/.exec(field) ?? [];
  const known = ['legs', ...LISTS] as const;
  const found = known.find((one) => one === list);
  const where =
    found === undefined
      ? field
      : `${tell(`yourRun.one-${found}`, { number: Number(k) + 1 })}${name === undefined ? '' : ` (${name})`}`;
  return tell('yourRun.faultAt', { where, message, todo });
}
