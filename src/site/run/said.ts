/** Places, parts and findings of a run, as its page and its job card name them. */
import type { Catalogue } from '../../run/catalogue.ts';
import type { RunFile } from '../../run/edit/file.ts';
import type { Finding } from '../../run/inspect/finding.ts';
import type { FittingItem, ResolvedRun } from '../../run/resolved.ts';
import type { Takeoff } from '../../run/takeoff.ts';
import { figure } from '../../trade/figure.ts';
import { fromInches, ticks } from '../../trade/length.ts';
import { shortLength } from '../../trade/shortLength.ts';
import type { SiteKey, Tell } from '../speak.ts';
import { fittingWords } from './words.ts';

type NeededJumper = Takeoff['jumpers'][number];

/** `At LAD-2`, `At FT-204`, `Leg 2 at 3'-0", expansion splice`. */
export function jumperPlace(
  { leg, atIn, reason }: Pick<NeededJumper, 'leg' | 'atIn' | 'reason'>,
  { start }: Pick<ResolvedRun, 'start'>,
  { tags, run }: Pick<RunFile, 'tags' | 'run'>,
  tell: Tell,
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
    at: shortLength(fromInches(atIn)),
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
export function findingPlace({ leg, at }: Pick<Finding, 'leg' | 'at'>, tell: Tell): string {
  return at === null
    ? tell('yourRun.wholeLeg', { leg })
    : tell('yourRun.placed', { leg, at: shortLength(ticks(Math.round(at))) });
}

/** A measured value or a limit in its unit. */
export function measureWords(value: Finding['measured'], unit: Finding['unit'], tell: Tell): string {
  if (typeof value !== 'number') return value ?? '–';
  if (unit === 'in') return shortLength(fromInches(value), 64);
  return unit === 'in2' ? tell('yourRun.area', { area: figure(value) }) : figure(value);
}
