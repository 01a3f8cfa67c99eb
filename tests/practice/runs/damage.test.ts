/** Faults put into runs of practice: an inspection finds exactly them. */
import { describe, expect, it } from 'vitest';
import {
  DAMAGE_KINDS,
  DAMAGES,
  type DamageKind,
  damaged,
  damagedSome,
} from '../../../src/practice/runs/damage.ts';
import { type SoundRun, soundRun } from '../../../src/practice/runs/sound.ts';
import { RULE_IDS } from '../../../src/run/inspect/finding.ts';
import { inspect, type RuleId } from '../../../src/run/inspect/inspect.ts';
import { resolveRun } from '../../../src/run/resolve.ts';
import { TRADE_USUAL } from '../../../src/run/usual.ts';
import { runJson } from '../../../src/run/writeRun.ts';
import { runShape } from '../../../src/schema/run.ts';
import { Chance } from '../../run/randomRun.ts';
import { bench, valuesBy, wantedBy } from './values.ts';

const { catalogue, tables } = bench;
const chance = new Chance(11);
const runs = Array.from({ length: 500 }, () => soundRun(valuesBy(chance), bench)).filter(
  (one) => one !== null,
);

/** What an inspection finds in the run as it would be written in a file. */
function found({ run }: Pick<SoundRun, 'run'>): readonly string[] {
  const read = runShape.parse(JSON.parse(JSON.stringify(runJson(run))));
  const { findings } = inspect(resolveRun(read, catalogue, TRADE_USUAL), catalogue, tables).result;
  return findings.map(({ rule, leg, at }) => `${rule} ${leg} ${at}`).sort();
}
const planted = (made: { planted: readonly { rule: RuleId; leg: string; at: number | null }[] }) =>
  made.planted.map(({ rule, leg, at }) => `${rule} ${leg} ${at}`).sort();

/** The rule that each damage breaks, as the trade would say it. */
const BREAKS: Readonly<Record<DamageKind, RuleId>> = {
  'span-long': 'span-too-long',
  'support-left-out': 'span-too-long',
  'fitting-bare': 'fitting-unsupported',
  'expansion-bare': 'expansion-unsupported',
  'end-bare': 'end-unsupported',
  'splice-mid': 'splice-past-quarter',
  'splice-twice': 'two-splices-in-span',
  'splice-end-span': 'splice-in-end-span',
  'splice-on-support': 'splice-on-support',
  'insertion-short': 'insertion-short',
  'insertion-long': 'insertion-long',
  'ends-butted': 'ends-butted',
  'hole-large': 'hole-wrong',
  'butt-open': 'gap-wrong',
  'expansion-off': 'gap-wrong',
  'cut-in-hole': 'cut-in-hole',
  'open-gap-long': 'open-gap-long',
  'jumper-missing': 'jumper-missing',
  'jumper-needless': 'jumper-needless',
  'jumper-small': 'jumper-small',
  'clamp-on-guide': 'anchor-many',
  'held-nowhere': 'anchor-none',
  'held-off-middle': 'anchor-off-middle',
  overfilled: 'fill-over',
  'barrier-no-row': 'fill-no-row',
  'barrier-missing': 'power-with-signal',
  'signal-with-power': 'power-with-signal',
  'air-tube': 'air-with-cables',
  'bend-tight': 'radius-small',
  'stood-on': 'used-as-step',
  'steel-sleeve': 'metals-mixed',
  'other-hand': 'wrong-hand',
};

describe('a damage', () => {
  it.each(DAMAGE_KINDS)('%s can be made, breaks its rule at its place and no other', (damage) => {
    let made = 0;
    for (const [i, sound] of runs.entries()) {
      const spoilt = damaged(sound, [{ damage, pick: 7 * i }], bench);
      if (spoilt === null) continue;
      made += 1;
      expect(spoilt.planted.map(({ rule }) => rule)).toEqual([BREAKS[damage]]);
      expect(found(spoilt)).toEqual(planted(spoilt));
      expect(found(sound)).toEqual([]);
    }
    expect(made).toBeGreaterThan(0);
  });

  it('is known for every rule of an inspection', () => {
    expect([...new Set(Object.values(BREAKS))].sort()).toEqual([...RULE_IDS].sort());
  });

  it('goes to another of its places by another pick', () => {
    const places = new Set(
      runs
        .slice(0, 1)
        .flatMap((sound) =>
          Array.from({ length: 12 }, (_, pick) =>
            JSON.stringify(damaged(sound, [{ damage: 'stood-on', pick }], bench)?.planted),
          ),
        ),
    );
    const spots = DAMAGES['stood-on'](runs[0]?.resolved as SoundRun['resolved'], bench);
    expect(places.size).toBe(spots.length);
  });
});

describe('several damages', () => {
  it('are found all, and nothing besides, and are the same for the same picks', () => {
    let made = 0;
    for (const sound of runs) {
      const wanted = wantedBy(chance, 3);
      const spoilt = damaged(sound, wanted, bench);
      if (spoilt === null) continue;
      made += 1;
      expect(spoilt.planted).toHaveLength(3);
      expect(found(spoilt)).toEqual(planted(spoilt));
      const again = damaged(sound, wanted, bench);
      expect(JSON.stringify([again?.run, again?.planted])).toBe(JSON.stringify([spoilt.run, spoilt.planted]));
    }
    expect(made).toBeGreaterThan(10);
  });

  it('are the first that can be made, where some cannot', () => {
    const all = DAMAGE_KINDS.map((damage) => ({ damage, pick: 0 }));
    let made = 0;
    for (const sound of runs.slice(0, 60)) {
      const some = damagedSome(sound, all, 5, bench);
      if (some === null) continue;
      made += 1;
      expect(some.planted).toHaveLength(5);
      expect(found(some)).toEqual(planted(some));
      expect(damagedSome(sound, all, DAMAGE_KINDS.length, bench)).toBeNull();
    }
    expect(made).toBeGreaterThan(20);
  });

  it('of one kind stand apart', () => {
    const twice = runs.flatMap((sound) => {
      const wanted = [1, 1].map((pick) => ({ damage: 'stood-on' as const, pick }));
      return damaged(sound, wanted, bench)?.planted ?? [];
    });
    expect(twice.length).toBeGreaterThan(0);
    for (let i = 0; i < twice.length; i += 2) expect(twice[i]).not.toEqual(twice[i + 1]);
  });
});
