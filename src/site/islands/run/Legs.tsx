import type { Drawing } from '../../../drawing/types.ts';
import type { Catalogue } from '../../../run/catalogue.ts';
import { AXES } from '../../../run/edit/ways.ts';
import type { ResolvedRun } from '../../../run/resolved.ts';
import type { Leg, Run } from '../../../run/types.ts';
import { directionOf, dot } from '../../../run/vector.ts';
import type { Fault } from '../../../trade/given.ts';
import { legFields } from '../../run/fields.ts';
import { longAs } from '../../run/lengths.ts';
import { choiceWords, directionWords } from '../../run/words.ts';
import type { Settings } from '../../settings.ts';
import type { Speak, Tell } from '../../speak.ts';
import { useLater } from '../useLater.ts';
import type { Values } from './FieldsForm.tsx';
import { axisLine } from './Rose.tsx';

interface Props {
  readonly run: Run;
  readonly resolved: ResolvedRun | null;
  readonly drawings: readonly Drawing[];
  readonly catalogue: Catalogue;
  readonly faults: readonly Fault[];
  readonly epoch: number;
  readonly onLeg: (k: number, leg: Values) => void;
  readonly onOff: (id: string) => void;
  readonly settings: Settings;
  readonly tell: Tell;
  readonly speak: Speak;
}

/** Fields of a leg are asked for when it is opened, a while after the page stands. */
const formPart = () => import('./FieldsForm.tsx').then(({ FieldsForm }) => FieldsForm);

/** The legs in the order they were entered: which way, by what fitting, how far; each opens to its fields. */
export function Legs({
  run,
  resolved,
  drawings,
  catalogue,
  faults,
  epoch,
  onLeg,
  onOff,
  settings,
  tell,
  speak,
}: Props) {
  const FieldsForm = useLater(formPart);
  return (
    <ol className="legs">
      {run.legs.map((leg, k) => {
        const wrong = faults.filter(({ field }) => field.startsWith(`legs[${k}]`));
        const turn = resolved?.byId.get(leg.id)?.turn ?? 'none';
        return (
          <li key={leg.id}>
            <details className="opens" open={wrong.length > 0 ? true : undefined}>
              <summary>
                <span className="number">{leg.id}</span>
                <svg
                  viewBox="0 0 44 44"
                  width="44"
                  height="44"
                  aria-hidden="true"
                  focusable="false"
                  fill="none"
                >
                  {axisLine(nearest(leg), true, 0.32, middleOf(leg))}
                </svg>
                <span className="what">
                  {directionWords(leg.dir, tell)}
                  <span className="names">
                    {leg.fitting === null
                      ? tell('yourRun.fromStart')
                      : choiceWords({ fitting: leg.fitting, turn }, catalogue, tell)}{' '}
                    {drawings.map(({ form, zones }) =>
                      zones[leg.id] === undefined ? null : (
                        <span key={form} className={form === 'desk' ? 'at-desk' : 'at-phone'}>
                          {tell('yourRun.zoneAlone', { zone: zones[leg.id] ?? '' })}
                        </span>
                      ),
                    )}
                  </span>
                </span>
                <b>{longAs(settings, tell)(leg.length)}</b>
              </summary>
              <div>
                {FieldsForm !== null && (
                  <FieldsForm
                    key={epoch}
                    fields={legFields}
                    values={leg as unknown as Values}
                    path={`legs[${k}]`}
                    faults={wrong}
                    onValues={(values) => onLeg(k, values)}
                    settings={settings}
                    tell={tell}
                    speak={speak}
                  />
                )}
                {wrong
                  .filter(
                    ({ field }) => !Object.keys(legFields).some((name) => field === `legs[${k}].${name}`),
                  )
                  .map(({ field, message, todo }) => (
                    <p className="message" key={field}>
                      <strong>{tell('yourRun.fault', { message, todo })}</strong>
                    </p>
                  ))}
                <p>
                  <button type="button" className="button second small" onClick={() => onOff(leg.id)}>
                    {tell('yourRun.legOff', { leg: leg.id })}
                  </button>
                </p>
              </div>
            </details>
          </li>
        );
      })}
    </ol>
  );
}

/** The axis that a leg goes along most, for its small arrow. */
function nearest({ dir }: Leg) {
  const along = directionOf(dir);
  return AXES.reduce((best, axis) =>
    dot(directionOf(axis), along) > dot(directionOf(best), along) + 1e-9 ? axis : best,
  );
}

/** The arrow begins where it stands in the middle of its box. */
function middleOf(leg: Leg): readonly [number, number] {
  const away = { N: [-8, 5], E: [-8, -5], S: [8, -5], W: [8, 5], U: [0, 10], D: [0, -10] } as const;
  const [x, y] = away[nearest(leg)];
  return [22 + x, 22 + y];
}
