import { type KeyboardEvent, useEffect, useId, useMemo, useRef, useState } from 'react';
import type { Catalogue } from '../../../run/catalogue.ts';
import { nextLegId, openEnds } from '../../../run/edit/legs.ts';
import { placesOf } from '../../../run/edit/place.ts';
import {
  AXES,
  type Axis,
  firstLeg,
  firstWays,
  fittingsOut,
  hingeOut,
  type WayOutChoice,
  waysOut,
} from '../../../run/edit/ways.ts';
import type { Direction, Run } from '../../../run/types.ts';
import type { Ticks } from '../../../trade/length.ts';
import { plainNumber } from '../../calculators/form.ts';
import { choiceWords, directionWords, fittingWords } from '../../run/words.ts';
import type { Speak, Tell } from '../../speak.ts';
import { lengthOf } from '../../tape.ts';
import { Arrow } from '../Arrow.tsx';
import { FeetInches } from '../FeetInches.tsx';
import { Rose } from './Rose.tsx';

interface Props {
  readonly run: Run;
  readonly catalogue: Catalogue;
  readonly onAdd: (choice: WayOutChoice, length: Ticks) => void;
  /** What would be added, for the figure; null while it is not whole. */
  readonly onDraft: (draft: { readonly choice: WayOutChoice; readonly length: Ticks } | null) => void;
  readonly tell: Tell;
  readonly speak: Speak;
}

/** A leg more: which way, by which fitting, how far. Enter adds it. */
export function AddLeg({ run, catalogue, onAdd, onDraft, tell, speak }: Props) {
  const id = useId();
  const form = useRef<HTMLFormElement>(null);
  const ends = useMemo(() => openEnds(run, catalogue), [run, catalogue]);
  const places = useMemo(() => placesOf(run, catalogue), [run, catalogue]);
  const first = run.legs.length === 0;
  const [from, setFrom] = useState('');
  const end = ends.includes(from) ? from : (ends.at(-1) ?? '');
  const place = places.find(({ leg }) => leg === end);
  const [onEdge, setOnEdge] = useState(false);
  const ways = useMemo(
    () => (first ? firstWays(onEdge) : place === undefined ? [] : waysOut(place)),
    [first, onEdge, place],
  );
  const others = useMemo(() => (place === undefined ? [] : fittingsOut(place)), [place]);
  const [choice, setChoice] = useState<WayOutChoice | null>(null);
  const [axis, setAxis] = useState<Axis | null>(null);
  const [fitting, setFitting] = useState('');
  const [degrees, setDegrees] = useState({ azimuth: '', slope: '0' });
  const [length, setLength] = useState<Ticks | null>(null);
  const [entry, setEntry] = useState(0);
  const [said, setSaid] = useState('');

  const draft = useRef(onDraft);
  draft.current = onDraft;
  useEffect(() => {
    draft.current(choice === null || length === null || length <= 0 ? null : { choice, length });
  }, [choice, length]);
  // What is chosen belongs to the run as it stood.
  // biome-ignore lint/correctness/useExhaustiveDependencies: whenever the legs or the end change
  useEffect(() => {
    setChoice(null);
    setAxis(null);
    setFitting('');
    setSaid('');
  }, [run.legs, end]);

  const take = (next: WayOutChoice | null, on: Axis | null) => {
    setChoice(next);
    setAxis(on);
    setSaid('');
  };
  const goTo = (to: Axis) => {
    const way = ways.find((w) => w.axis === to);
    if (way === undefined) return;
    if (way.choice === null) {
      setSaid(whyWords(way.axis));
      return;
    }
    take(way.choice, to);
    setFitting('');
  };
  const whyWords = (to: Axis) => {
    const why = ways.find((w) => w.axis === to)?.why ?? 'noElbow';
    return tell(`yourRun.why-${why}`, { way: tell(`yourRun.dir-${to}`), leg: end });
  };
  const keyed = (event: KeyboardEvent<HTMLFormElement>) => {
    if (event.ctrlKey || event.altKey || event.metaKey) return;
    const to = AXES.find((name) => tell(`yourRun.letter-${name}`).toLowerCase() === event.key.toLowerCase());
    const typing = (event.target as HTMLElement).matches('[data-typed] *, select:not(.tape-entry *)');
    if (to === undefined || typing) return;
    event.preventDefault();
    goTo(to);
    if (ways.find((w) => w.axis === to)?.choice) feet()?.focus();
  };
  const feet = () => form.current?.querySelector<HTMLInputElement>('.tape-entry input') ?? null;
  const add = () => {
    if (choice === null) {
      setSaid(tell('yourRun.pickWay'));
      form.current?.querySelector<HTMLInputElement>('.rose input')?.focus();
      return;
    }
    if (length === null || length <= 0) {
      setSaid(tell('yourRun.giveLength'));
      feet()?.focus();
      return;
    }
    onAdd(choice, length);
    setFrom('');
    setLength(null);
    setEntry(entry + 1);
    requestAnimationFrame(() => form.current?.querySelector<HTMLInputElement>('.rose input')?.focus());
  };
  const byDegrees = (text: { azimuth: string; slope: string }) => {
    setDegrees(text);
    const dir = directionOfText(text);
    if (dir === null) return take(null, null);
    take(first ? firstLeg(dir, onEdge) : hingeOut(place ?? nowhere(), fitting, dir), null);
  };
  const hinge = others.find(({ item }) => item.id === fitting)?.item.kind === 'hinge';
  const blocked = ways.filter((w) => w.choice === null);

  return (
    <form
      ref={form}
      id="add-leg"
      className="off-paper add-leg"
      onKeyDown={keyed}
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
    >
      <h2 className="view-title">{tell('yourRun.newLeg', { leg: nextLegId(run) })}</h2>
      {ends.length > 1 && (
        <p data-typed>
          <label htmlFor={`${id}-from`}>{tell('yourRun.goesOnFrom')}</label>
          <select id={`${id}-from`} value={end} onChange={(event) => setFrom(event.currentTarget.value)}>
            {ends.map((leg) => (
              <option key={leg} value={leg}>
                {tell('yourRun.leg', { leg })}
              </option>
            ))}
          </select>
        </p>
      )}
      <div className="add-parts">
        <fieldset>
          <legend>{tell('yourRun.whichWay')}</legend>
          <Rose ways={ways} chosen={axis} onWay={goTo} describedBy={`${id}-why`} tell={tell} />
          <ul className="hint no-ways" id={`${id}-why`}>
            {blocked.map((w) => (
              <li key={w.axis}>{whyWords(w.axis)}</li>
            ))}
          </ul>
        </fieldset>
        <div>
          <FeetInches
            key={entry}
            legend={tell('yourRun.howFar')}
            initial={null}
            tape={false}
            onReading={(reading) => setLength(lengthOf(reading))}
            describedBy={`${id}-named`}
            tell={tell}
            speak={speak}
          />
          <p id={`${id}-named`} aria-live="polite">
            {choice === null
              ? tell('yourRun.named')
              : tell('yourRun.turn', { turn: choiceWords(choice, catalogue, tell) })}
          </p>
          <p className="hint">{tell('yourRun.keys')}</p>
        </div>
      </div>
      <details className="opens" data-typed>
        <summary>{tell(first ? 'yourRun.otherWay' : 'yourRun.otherFitting')}</summary>
        <div className="fields run-fields">
          {first ? (
            <label className="choice">
              <input
                type="checkbox"
                checked={onEdge}
                onChange={() => {
                  setOnEdge(!onEdge);
                  take(null, null);
                }}
              />
              <i />
              {tell('yourRun.liesOnEdge')}
            </label>
          ) : (
            <div>
              <label htmlFor={`${id}-fitting`}>{tell('yourRun.fitting')}</label>
              <select
                id={`${id}-fitting`}
                value={fitting}
                onChange={(event) => {
                  setFitting(event.currentTarget.value);
                  take(null, null);
                }}
              >
                <option value="">{tell('yourRun.byTheWay')}</option>
                {others.map(({ item }) => (
                  <option key={item.id} value={item.id}>
                    {fittingWords(item, tell)}
                  </option>
                ))}
              </select>
            </div>
          )}
          {!first && fitting !== '' && !hinge && (
            <fieldset>
              <legend>{tell('yourRun.whereTo')}</legend>
              {others
                .find(({ item }) => item.id === fitting)
                ?.ways.map((way) => (
                  <label className="choice" key={`${way.from} ${directionWords(way.dir, tell)}`}>
                    <input
                      type="radio"
                      name="fitting-way"
                      checked={choice !== null && choice.dir === way.dir && choice.from === way.from}
                      onChange={() => take(way, null)}
                    />
                    <i />
                    {tell('yourRun.wayTo', {
                      turn: tell(`yourRun.turn-${way.turn}`),
                      dir: directionWords(way.dir, tell),
                    })}
                  </label>
                ))}
            </fieldset>
          )}
          {(first || hinge) && (
            <fieldset>
              <legend>{tell('yourRun.byDegrees')}</legend>
              <div className="pair">
                {(['azimuth', 'slope'] as const).map((part) => (
                  <div key={part}>
                    <label htmlFor={`${id}-${part}`}>{tell(`yourRun.${part}`)}</label>
                    <input
                      id={`${id}-${part}`}
                      type="text"
                      autoComplete="off"
                      value={degrees[part]}
                      onChange={(event) => byDegrees({ ...degrees, [part]: event.currentTarget.value })}
                    />
                  </div>
                ))}
              </div>
              <p className="hint">
                {hinge && degrees.azimuth !== '' && choice === null
                  ? tell('yourRun.hingeNot')
                  : tell('yourRun.degreesHint')}
              </p>
            </fieldset>
          )}
        </div>
      </details>
      {said !== '' && (
        <p className="message" role="alert">
          <strong>{said}</strong>
        </p>
      )}
      <div className="buttons">
        <button type="submit" className="button">
          {tell('yourRun.addLeg', { leg: nextLegId(run) })} <Arrow />
        </button>
      </div>
    </form>
  );
}

function nowhere(): never {
  throw new Error('a hinge stands at the end of a leg');
}

function directionOfText({ azimuth, slope }: { azimuth: string; slope: string }): Direction | null {
  const read = (text: string) => plainNumber(text.trim()) ?? Number.NaN;
  const [azimuthDeg, slopeDeg] = [read(azimuth), read(slope)];
  if (!(azimuthDeg >= 0 && azimuthDeg < 360 && Math.abs(slopeDeg) <= 90)) return null;
  return { azimuthDeg, slopeDeg };
}
