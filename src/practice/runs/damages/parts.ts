/** Parts that do not belong, and channel that was stood on. */
import { TICKS_PER_INCH } from '../../../trade/length.ts';
import { type Damage, type Spoilt, wholeInch, withJoint, withLeg } from './damage.ts';

/** A foot's mark on the channel. */
export const stoodOn: Damage = ({ run, legs }) =>
  legs
    .filter(({ plumb }) => !plumb)
    .flatMap(({ leg, pieces }) =>
      pieces.map(({ from, to }): Spoilt => {
        const at = wholeInch((from + to) / 2);
        return {
          run: { ...run, marks: [...(run.marks ?? []), { leg, at, kind: 'step' }] },
          planted: { rule: 'used-as-step', leg, at },
        };
      }),
    );

/** A sleeve of steel on aluminium channel. */
export const steelSleeve: Damage = ({ run, legs }, { catalogue }) =>
  legs.flatMap(({ leg, tray, joints }) =>
    joints.flatMap((joint): readonly Spoilt[] => {
      const item = `card-${tray.width / TICKS_PER_INCH}-sleeve-steel`;
      return joint.kind === 'socketed' && catalogue.has(item)
        ? [
            {
              run: withJoint(run, joint.given, { item }),
              planted: { rule: 'metals-mixed', leg, at: joint.at },
            },
          ]
        : [];
    }),
  );

const HANDS = ['straight', 'left', 'right'] as const;

/** A reducer of another hand than the drawing has. */
export const otherHand: Damage = ({ run, legs }) =>
  legs.flatMap(({ leg, given, fittingBefore }): readonly Spoilt[] => {
    const item = fittingBefore?.item;
    if (item?.kind !== 'reducer' || given.keeps === undefined) return [];
    return HANDS.filter((hand) => hand !== item.hand).map((hand) => ({
      run: withLeg(run, leg, { fitting: item.id.replace(/[a-z]+$/, hand) }),
      planted: { rule: 'wrong-hand', leg, at: wholeInch(0) },
    }));
  });
