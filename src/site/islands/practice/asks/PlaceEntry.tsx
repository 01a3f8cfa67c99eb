import { useId, useMemo, useRef, useState } from 'react';
import type { PlaceWhat } from '../../../../drawing/tap/given.ts';
import type { PlacedAt } from '../../../../practice/model.ts';
import { fromInches, inches } from '../../../../trade/length.ts';
import { shortLength } from '../../../../trade/shortLength.ts';
import { question } from '../../../practice.ts';
import { Fetching } from '../../Fetching.tsx';
import { useFetched } from '../../useLater.ts';
import { ByMeasure } from './ByMeasure.tsx';
import type { EntryProps } from './entry.ts';
import { alongRun, runOf, sameMark } from './onRun.ts';

const figure = () => import('./TapFigure.tsx').then(({ TapFigure }) => TapFigure);

/** How far one press moves what was set down, inches. */
const MOVES = [-6, -1, 1, 6] as const;

/** Things set down on a drawn run by tapping; each may then be moved by whole inches, or taken off. */
export function PlaceEntry(props: EntryProps<readonly PlacedAt[]>) {
  const { ask, answer = [], onAnswer, draw, within, world, taped, tell, speak } = props;
  const id = useId();
  const later = useFetched(figure);
  const Figure = later.part;
  const resolved = useMemo(() => runOf({ draw, within, world }), [draw, within, world]);
  const whats = (ask.options ?? []) as readonly { readonly id: PlaceWhat; readonly text: string }[];
  const [what, setWhat] = useState<PlaceWhat>(whats[0]?.id ?? 'support');
  const [said, setSaid] = useState('');
  const whole = useRef<HTMLFieldSetElement>(null);
  const nameOf = (one: PlacedAt) => whats.find((w) => w.id === one.what)?.text ?? one.what;
  const text = (one: PlacedAt) =>
    tell('asks.placed', { what: nameOf(one), leg: one.leg, at: shortLength(fromInches(one.at)) });
  const give = (marks: readonly PlacedAt[], saying: string) => {
    onAnswer(marks.length === 0 ? undefined : marks);
    setSaid(saying);
  };
  const takeOff = (one: PlacedAt) =>
    give(
      answer.filter((other) => !sameMark(other, one)),
      tell('asks.takenOff', { mark: text(one) }),
    );
  const setDown = (one: PlacedAt) => {
    if (answer.some((other) => sameMark(other, one))) return;
    // In order along the run; a mark that is moved keeps its row, and its buttons the focus.
    give(
      alongRun([...answer, one], resolved),
      tell('asks.setDown', { mark: text(one), count: answer.length + 1 }),
    );
  };
  /** By so many inches, over any mark that stands there already; never off the leg. */
  const move = (one: PlacedAt, by: number) => {
    const long = inches(resolved.byId.get(one.leg)?.length ?? fromInches(0));
    let next = { ...one, at: one.at + by };
    while (answer.some((other) => sameMark(other, next))) next = { ...next, at: next.at + Math.sign(by) };
    if (next.at < 0 || next.at > long) return;
    give(
      answer.map((other) => (sameMark(other, one) ? next : other)),
      text(next),
    );
  };
  const chosen = useMemo(
    () => answer.map((one, i) => ({ ...one, held: taped?.marks?.[i] })),
    [answer, taped],
  );
  const tap = useMemo(() => ({ kind: 'place', what }) as const, [what]);
  const movable = what !== 'jumper' && what !== 'anchor';
  return (
    <fieldset ref={whole} tabIndex={-1}>
      <legend>{question(ask)}</legend>
      {whats.length > 1 && (
        <fieldset className="whats">
          <legend>{tell('asks.what')}</legend>
          {whats.map((one) => (
            <label className="choice" key={one.id}>
              <input
                type="radio"
                name={`${id}-what`}
                checked={what === one.id}
                onChange={() => setWhat(one.id)}
              />
              <i />
              {one.text}
            </label>
          ))}
        </fieldset>
      )}
      {Figure === null ? (
        <Fetching later={later} tell={tell} />
      ) : (
        <Figure
          resolved={resolved}
          tap={tap}
          chosen={chosen}
          found={taped?.found}
          ringed={taped?.holds}
          speak={speak}
          control={(target) => {
            const mark = { leg: target.leg, at: target.at ?? 0, what };
            const own = answer.find((one) => sameMark(one, mark));
            return (
              <input
                type="checkbox"
                aria-label={target.words}
                checked={own !== undefined}
                onChange={() => (own === undefined ? setDown(mark) : takeOff(own))}
              />
            );
          }}
        />
      )}
      {answer.length === 0 ? (
        <p className="hint">{tell(movable ? 'asks.noneSet' : 'asks.noneSetThere')}</p>
      ) : (
        <ul className="set-down">
          {answer.map((one, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a mark that is moved stays the row that it was
            <li key={i}>
              <span>{text(one)}</span>
              {(one.what === 'support' || one.what === 'splice') &&
                MOVES.map((by) => (
                  <button
                    type="button"
                    className="button second small"
                    key={by}
                    aria-label={tell(by < 0 ? 'asks.back' : 'asks.on', { by: Math.abs(by), mark: text(one) })}
                    onClick={() => move(one, by)}
                  >
                    {tell(by < 0 ? 'asks.less' : 'asks.more', { by: Math.abs(by) })}
                  </button>
                ))}
              <button
                type="button"
                className="as-link"
                aria-label={tell('asks.takeOffNamed', { mark: text(one) })}
                onClick={() => {
                  takeOff(one);
                  // Its own row is gone: the focus stays in the entry.
                  whole.current?.focus({ preventScroll: true });
                }}
              >
                {tell('asks.takeOff')}
              </button>
            </li>
          ))}
        </ul>
      )}
      {movable && (
        <ByMeasure
          resolved={resolved}
          what={whats.find((one) => one.id === what)?.text ?? what}
          onSet={(leg, at) => setDown({ leg, at, what })}
          tell={tell}
          speak={speak}
        />
      )}
      <p className="spoken" role="status">
        {said}
      </p>
    </fieldset>
  );
}
