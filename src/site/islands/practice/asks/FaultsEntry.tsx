import { useId, useMemo, useRef, useState } from 'react';
import type { TapPlace } from '../../../../drawing/tap/given.ts';
import type { FaultAt } from '../../../../practice/model.ts';
import { fromInches } from '../../../../trade/length.ts';
import { shortLength } from '../../../../trade/shortLength.ts';
import { question } from '../../../practice.ts';
import { Fetching } from '../../Fetching.tsx';
import { useFetched } from '../../useLater.ts';
import type { EntryProps } from './entry.ts';
import { alongRun, faultChosen, faultOn, isOn, runOf } from './onRun.ts';

const figure = () => import('./TapFigure.tsx').then(({ TapFigure }) => TapFigure);

/** Faults of a drawn run: a part is tapped, then its fault is named from the list of rules. */
export function FaultsEntry(props: EntryProps<readonly FaultAt[]>) {
  const { ask, answer = [], onAnswer, draw, within, world, taped, tell, speak } = props;
  const id = useId();
  const later = useFetched(figure);
  const Figure = later.part;
  const resolved = useMemo(() => runOf({ draw, within, world }), [draw, within, world]);
  const [part, setPart] = useState<TapPlace | null>(null);
  const [rule, setRule] = useState('');
  const [said, setSaid] = useState('');
  const whole = useRef<HTMLFieldSetElement>(null);
  const list = useRef<HTMLSelectElement>(null);
  const tapped = useRef<HTMLButtonElement>(null);
  const rules = ask.options ?? [];
  const text = (one: FaultAt) =>
    tell('asks.fault', {
      rule: rules.find((r) => r.id === one.rule)?.text ?? one.rule,
      leg: one.leg,
      at: shortLength(fromInches(one.at)),
    });
  const pick = (target: TapPlace, button: HTMLButtonElement) => {
    tapped.current = button;
    setRule('');
    setPart(part?.key === target.key ? null : target);
    requestAnimationFrame(() => list.current?.focus({ preventScroll: true }));
  };
  /** The focus goes back to the part, which stays where it was on the page. */
  const done = (saying: string) => {
    setPart(null);
    setRule('');
    setSaid(saying);
    tapped.current?.focus({ preventScroll: true });
  };
  const name = () => {
    if (part === null || rule === '') return;
    const fault = faultOn(part, rule);
    const twice = answer.some(
      (one) => one.leg === fault.leg && one.at === fault.at && one.rule === fault.rule,
    );
    if (!twice) onAnswer(alongRun([...answer, fault], resolved));
    done(tell('asks.named', { fault: text(fault), count: answer.length + (twice ? 0 : 1) }));
  };
  const takeOff = (fault: FaultAt) => {
    const rest = answer.filter((one) => one !== fault);
    onAnswer(rest.length === 0 ? undefined : rest);
    setSaid(tell('asks.takenOff', { mark: text(fault) }));
    // Its own row is gone: the focus stays in the entry.
    whole.current?.focus({ preventScroll: true });
  };
  const chosen = useMemo(
    () => answer.map((one, i) => ({ ...faultChosen(one), held: taped?.marks?.[i] })),
    [answer, taped],
  );
  const tap = useMemo(() => ({ kind: 'faults' }) as const, []);
  return (
    <fieldset ref={whole} tabIndex={-1}>
      <legend>{question(ask)}</legend>
      {Figure === null ? (
        <Fetching later={later} tell={tell} />
      ) : (
        <Figure
          resolved={resolved}
          tap={tap}
          chosen={chosen}
          found={taped?.found}
          speak={speak}
          control={(target) => (
            <button
              type="button"
              aria-label={target.words}
              aria-expanded={part?.key === target.key}
              aria-pressed={answer.some((one) => isOn(one, target))}
              onClick={(event) => pick(target, event.currentTarget)}
            />
          )}
        />
      )}
      {part !== null && (
        <div className="picked">
          <p>{part.words}</p>
          <label htmlFor={`${id}-rule`}>{tell('asks.rule')}</label>
          <select
            ref={list}
            id={`${id}-rule`}
            value={rule}
            onChange={(event) => setRule(event.currentTarget.value)}
            onKeyDown={(event) => {
              if (event.key === 'Escape') done('');
            }}
          >
            <option value="">{tell('asks.ruleNone')}</option>
            {rules.map((one) => (
              <option key={one.id} value={one.id}>
                {one.text}
              </option>
            ))}
          </select>
          <p className="picked-buttons">
            <button type="button" className="button second small" onClick={name} disabled={rule === ''}>
              {tell('asks.name')}
            </button>
            <button type="button" className="as-link" onClick={() => done('')}>
              {tell('asks.leave')}
            </button>
          </p>
        </div>
      )}
      {answer.length === 0 ? (
        <p className="hint">{tell('asks.noneNamed')}</p>
      ) : (
        <ul className="set-down">
          {answer.map((one) => (
            <li key={`${one.leg}-${one.at}-${one.rule}`}>
              <span>{text(one)}</span>
              <button
                type="button"
                className="as-link"
                aria-label={tell('asks.takeOffNamed', { mark: text(one) })}
                onClick={() => takeOff(one)}
              >
                {tell('asks.takeOff')}
              </button>
            </li>
          ))}
        </ul>
      )}
      <p className="spoken" role="status">
        {said}
      </p>
    </fieldset>
  );
}
