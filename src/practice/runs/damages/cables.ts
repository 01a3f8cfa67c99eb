/** Cables that do not belong: too many, of the wrong kind beside each other, too stiff for a bend. */
import type { ResolvedLeg, ResolvedRun } from '../../../run/resolved.ts';
import type { RunCable } from '../../../run/types.ts';
import { inches, ticks } from '../../../trade/length.ts';
import { CABLES } from '../cables.ts';
import { type Damage, moreCables, type Planted, type Spoilt, withLeg } from './damage.ts';

const whole = (rule: Planted['rule'], leg: ResolvedLeg): Planted => ({ rule, leg: leg.leg, at: null });
const figures = ({ type, odIn, lbPerFt, use }: Pick<RunCable, 'type' | 'odIn' | 'lbPerFt' | 'use'>) => ({
  type,
  odIn,
  lbPerFt,
  use,
});
const firstLeg = ({ legs }: ResolvedRun): readonly ResolvedLeg[] => legs.slice(0, 1);

/** A later list has more cables; they leave the run at the end of its first leg. */
export const overfilled: Damage = (resolved) =>
  firstLeg(resolved).flatMap((leg) =>
    ([4, 5, 6, 8, 10, 12] as const).map(
      (count): Spoilt => ({
        run: moreCables(resolved.run, { ...figures(CABLES['power-10']), deviceA: 20, count, to: leg.leg }),
        planted: whole('fill-over', leg),
      }),
    ),
  );

/** A barrier in a channel that has no row for half its width. */
export const barrierNoRow: Damage = (resolved) =>
  resolved.legs
    .filter(({ given, leg }) => given.barrier !== true && resolved.run.cables?.some(({ to }) => to === leg))
    .map((leg): Spoilt => {
      const barred = withLeg(resolved.run, leg.leg, { barrier: true });
      const side = (cable: RunCable): RunCable =>
        cable.use === 'air' ? cable : { ...cable, side: cable.use === 'power' ? 'left' : 'right' };
      return {
        run: { ...barred, cables: (barred.cables ?? []).map(side) },
        planted: whole('fill-no-row', leg),
      };
    });

/** A barrier that was left out on one leg: power and signal lie together there. */
export const barrierMissing: Damage = (resolved) =>
  resolved.legs
    .filter(({ given }) => given.barrier === true)
    .map(
      (leg): Spoilt => ({
        run: withLeg(resolved.run, leg.leg, { barrier: undefined }),
        planted: whole('power-with-signal', leg),
      }),
    );

/** A signal cable laid into a channel of power. */
export const signalWithPower: Damage = (resolved) =>
  firstLeg(resolved)
    .filter(({ given }) => given.barrier !== true)
    .flatMap((leg) =>
      (['signal-2', 'signal-8'] as const).map(
        (name): Spoilt => ({
          run: moreCables(resolved.run, { ...figures(CABLES[name]), to: leg.leg }),
          planted: whole('power-with-signal', leg),
        }),
      ),
    );

const TUBE = { type: 'tube', use: 'air', odIn: 0.375, lbPerFt: 0.05 } as const;

/** Instrument air takes the same way. */
export const airTube: Damage = (resolved) =>
  firstLeg(resolved).map(
    (leg): Spoilt => ({
      run: moreCables(resolved.run, { ...TUBE, to: leg.leg }),
      planted: whole('air-with-cables', leg),
    }),
  );

/** Outside diameters of armoured cables, of which the first is taken that is too stiff; a bend of 7 diameters. */
const ARMOURED = [0.74, 0.88, 0.98] as const;

const bendsBefore = ({ parent }: ResolvedLeg): boolean =>
  parent !== null && (parent.fittingBefore?.item.kind === 'elbow' || bendsBefore(parent));

/** A stiff cable goes round one elbow. */
export const bendTight: Damage = (resolved) =>
  resolved.legs.flatMap((leg): readonly Spoilt[] => {
    const item = leg.fittingBefore?.item;
    if (item?.kind !== 'elbow' || bendsBefore(leg)) return [];
    const odIn = ARMOURED.find((od) => 7 * od > inches(item.insideRadius));
    if (odIn === undefined) return [];
    return [
      {
        run: moreCables(resolved.run, {
          type: 'MC interlocked',
          use: 'power',
          odIn,
          lbPerFt: 0.6,
          deviceA: 20,
          to: leg.leg,
        }),
        planted: { rule: 'radius-small', leg: leg.leg, at: ticks(0) },
      },
    ];
  });
