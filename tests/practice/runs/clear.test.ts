/**
 * A run with faults could be built, and each fault is named at one place: naming the thing beside it never counts. That
 * channel of some length shows between two joints is common practice, no source; 12 in is a training value.
 */
import { describe, expect, test } from 'vitest';
import type { FaultAt } from '../../../src/practice/model.ts';
import { couldStand, namedAlone } from '../../../src/practice/runs/clear.ts';
import { damagedSome } from '../../../src/practice/runs/damage.ts';
import { moreJoints } from '../../../src/practice/runs/damages/damage.ts';
import { nameable } from '../../../src/practice/runs/nameable.ts';
import { soundRun } from '../../../src/practice/runs/sound.ts';
import { RULE_IDS, type RuleId } from '../../../src/run/inspect/finding.ts';
import { resolveRun } from '../../../src/run/resolve.ts';
import type { ResolvedRun } from '../../../src/run/resolved.ts';
import { TRADE_USUAL } from '../../../src/run/usual.ts';
import { fromInches, inches } from '../../../src/trade/length.ts';
import { Chance } from '../../run/randomRun.ts';
import { draw, family, finding } from '../means.ts';
import { bench, valuesBy, wantedBy } from './values.ts';

const FAMILIES = ['find-support-faults', 'find-bonding-faults', 'find-faults'];
const SEEDS = Array.from({ length: 35 }, (_, k) => String(k + 1));
const drawn = FAMILIES.flatMap((id) =>
  SEEDS.map((seed) => {
    const one = draw(id, seed);
    return {
      id,
      seed,
      one,
      ...(one.plan as unknown as { resolved: ResolvedRun; named: readonly FaultAt[] }),
    };
  }),
);
/** By chance from every damage there is, three in a run. */
const chance = new Chance(5);
const byChance = Array.from({ length: 500 }, () => soundRun(valuesBy(chance), bench)).flatMap((sound) => {
  const made = sound === null ? null : damagedSome(sound, wantedBy(chance, 8), 3, bench);
  return made === null ? [] : [made];
});

/** From edge to edge of what stands along a leg, in inches: no two reach within 12 in of each other. */
function channelShows({ legs }: ResolvedRun): boolean {
  return legs.every((leg) => {
    const edges = [inches(leg.start.takeOut)];
    for (const { at, length, opening } of leg.joints) {
      const half = Math.max(inches(length), inches(opening)) / 2;
      edges.push(inches(at) - half, inches(at) + half);
    }
    edges.push(inches(leg.length) - inches(leg.end.takeOut));
    return edges.every((edge, i) => i % 2 === 0 || edge - (edges[i - 1] as number) >= 12);
  });
}
const apart = ({ legs }: ResolvedRun) =>
  legs.every(({ supports }) =>
    supports.every(({ at }, i) => i === 0 || at - (supports[i - 1]?.at ?? 0) >= fromInches(6)),
  );

describe('a run with faults', () => {
  test('has channel between any two joints, and no support on another', () => {
    expect(drawn).toHaveLength(105);
    expect(byChance.length).toBeGreaterThan(60);
    for (const { resolved } of [...drawn, ...byChance]) {
      expect([channelShows(resolved), apart(resolved)]).toEqual([true, true]);
    }
  });

  test('holds no fault that is named by the place of another of its kind', () => {
    let others = 0;
    for (const { id, one, resolved, named } of drawn) {
      const tolerance = family(id).asks.find((ask) => ask.kind === 'faults')?.tolerance ?? 0;
      for (const [i, fault] of named.entries()) {
        const leg = resolved.legs.find((l) => l.leg === fault.leg);
        if (leg === undefined) throw new Error(`no leg ${fault.leg}`);
        const places = nameable(fault.rule as RuleId, leg, resolved, bench).map(inches);
        const beside = places.filter((at) => Math.abs(at - fault.at) > 1);
        for (const at of beside) expect(Math.abs(at - fault.at)).toBeGreaterThanOrEqual(2 * tolerance);
        const nearest = beside.toSorted((a, b) => Math.abs(a - fault.at) - Math.abs(b - fault.at))[0];
        if (nearest === undefined) continue;
        others += 1;
        expect(finding(one, 'faults', named.with(i, { ...fault, at: nearest })).verdict).not.toBe('holds');
      }
    }
    expect(others).toBeGreaterThan(200);
  });
});

describe('both sides of it', () => {
  const sleeved = drawn.find(({ resolved: { legs } }) =>
    legs.some(({ joints }) => joints.some(({ kind }) => kind === 'socketed')),
  );
  const { resolved } = sleeved as { resolved: ResolvedRun };
  test('a second sleeve needs both half lengths and 12 in of channel', () => {
    const leg = resolved.legs.find(({ joints }) => joints.some(({ kind }) => kind === 'socketed'));
    const joint = leg?.joints.find(({ kind }) => kind === 'socketed');
    if (leg === undefined || joint === undefined) throw new Error('no sleeve');
    const bare = { ...resolved.run, joints: resolved.run.joints?.filter((one) => one === joint.given) ?? [] };
    const withSecond = (more: number) => {
      const at = fromInches(inches(joint.at) - inches(joint.length) - more);
      const kind = 'socketed' as const;
      return couldStand(
        resolveRun(moreJoints(bare, { leg: leg.leg, at, kind }), bench.catalogue, TRADE_USUAL),
      );
    };
    expect([withSecond(-8), withSecond(11.875), withSecond(12)]).toEqual([false, false, true]);
  });
  test('a place within 12 in of another of its kind is not the only one', () => {
    const leg = resolved.legs.find(({ supports }) => supports.length > 1);
    const [first] = leg?.supports ?? [];
    if (leg === undefined || first === undefined) throw new Error('no supports');
    const planted = { rule: 'anchor-many', leg: leg.leg, at: first.at } as const;
    const second = (more: number) => {
      const at = fromInches(inches(first.at) + more);
      const supports = [...(resolved.run.supports ?? []), { ...first, at }];
      return namedAlone(
        planted,
        resolveRun({ ...resolved.run, supports }, bench.catalogue, TRADE_USUAL),
        bench,
      );
    };
    expect([second(11.875), second(12)]).toEqual([false, true]);
  });
  test('every rule is known', () => {
    for (const rule of RULE_IDS)
      for (const leg of resolved.legs) expect(Array.isArray(nameable(rule, leg, resolved, bench))).toBe(true);
  });
});
