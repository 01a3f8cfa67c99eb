import { useEffect, useId, useRef, useState } from 'react';
import type { ShownAsk } from '../../../practice/show.ts';
import { fromInches, inches } from '../../../trade/length.ts';
import { type Given, readNumber } from '../../practice.ts';
import { type Speak, type Tell, unbroken } from '../../speak.ts';
import type { TapeReading } from '../../tape.ts';
import { FeetInches } from '../FeetInches.tsx';

export type AskAnswer = Given[string] | undefined;

interface Props {
  readonly ask: ShownAsk;
  readonly answer: AskAnswer;
  /** `undefined` is a blank, or something that cannot be read yet. */
  readonly onAnswer: (answer: AskAnswer) => void;
  readonly tell: Tell;
  readonly speak: Speak;
}

/** The entry that fits the kind of an ask. */
export function AskEntry(props: Props) {
  const { ask } = props;
  if (ask.kind === 'number') return ask.unit === 'in' ? <LengthAsk {...props} /> : <NumberAsk {...props} />;
  if (ask.kind === 'choice') return <ChoiceAsk {...props} />;
  return <OrderAsk {...props} />;
}

function LengthAsk({ ask, answer, onAnswer, tell, speak }: Props) {
  const [first] = useState(answer);
  const read = (reading: TapeReading) =>
    onAnswer(reading.read === 'length' ? inches(reading.length) : undefined);
  return (
    <FeetInches
      legend={unbroken(ask.prompt)}
      initial={typeof first === 'number' ? fromInches(first) : null}
      onReading={read}
      units="own"
      tell={tell}
      speak={speak}
    />
  );
}

function NumberAsk({ ask, answer, onAnswer, tell }: Props) {
  const id = useId();
  const box = useRef<HTMLInputElement>(null);
  const [text, setText] = useState(typeof answer === 'number' ? String(answer) : '');
  const change = (next: string) => {
    setText(next);
    onAnswer(readNumber(next, ask.unit) ?? undefined);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when script takes the page over
  useEffect(() => {
    if (box.current !== null && box.current.value !== '') change(box.current.value);
  }, []);
  const bad = readNumber(text, ask.unit) === undefined;
  return (
    <fieldset>
      <legend>{unbroken(ask.prompt)}</legend>
      <div className="number-entry">
        <label htmlFor={id}>
          {tell('practicePage.inUnit', { unit: ask.unit === 'in2' ? tell('unit.in2') : (ask.unit ?? '') })}
        </label>
        <input
          ref={box}
          id={id}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          value={text}
          aria-invalid={bad ? true : undefined}
          aria-describedby={`${id}-message`}
          onChange={(event) => change(event.currentTarget.value)}
        />
      </div>
      <p className="message" id={`${id}-message`}>
        {bad && (
          <strong>{tell(text.includes(',') ? 'practicePage.numberComma' : 'practicePage.numberNot')}</strong>
        )}
      </p>
    </fieldset>
  );
}

function ChoiceAsk({ ask, answer, onAnswer }: Props) {
  const id = useId();
  const group = useRef<HTMLFieldSetElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when script takes the page over
  useEffect(() => {
    const chosen = group.current?.querySelector<HTMLInputElement>('input:checked')?.value;
    if (chosen !== undefined) onAnswer(chosen);
  }, []);
  return (
    <fieldset ref={group}>
      <legend>{unbroken(ask.prompt)}</legend>
      {ask.options?.map((option) => (
        <label className="choice" key={option.id}>
          <input
            type="radio"
            name={`${id}-${ask.id}`}
            value={option.id}
            checked={answer === option.id}
            onChange={() => onAnswer(option.id)}
          />
          <i />
          {option.text}
        </label>
      ))}
    </fieldset>
  );
}

/** Rows that move up and down by buttons: no dragging, so gloves and keyboard do as well. Blank until the first move. */
function OrderAsk({ ask, answer, onAnswer, tell }: Props) {
  const id = useId();
  const list = useRef<HTMLOListElement>(null);
  const [said, setSaid] = useState('');
  const items = ask.items ?? [];
  const moved = Array.isArray(answer);
  const order = moved ? (answer as readonly string[]) : items.map((item) => item.id);
  const textOf = (wanted: string) => items.find((item) => item.id === wanted)?.text ?? wanted;
  const move = (from: number, to: number) => {
    const next = [...order];
    const [taken] = next.splice(from, 1);
    if (taken === undefined) return;
    next.splice(to, 0, taken);
    onAnswer(next);
    setSaid(tell('practicePage.moved', { item: textOf(taken), place: to + 1, of: order.length }));
    // The focus goes along with the row; at either end the other button takes it.
    requestAnimationFrame(() => {
      const row = list.current?.children[to];
      const buttons = row?.querySelectorAll<HTMLButtonElement>('button');
      const wanted = buttons?.[to < from ? 0 : 1];
      const button = wanted?.disabled === true ? buttons?.[to < from ? 1 : 0] : wanted;
      button?.focus();
    });
  };
  return (
    <fieldset aria-describedby={moved ? undefined : `${id}-unmoved`}>
      <legend>{unbroken(ask.prompt)}</legend>
      <ol className={moved ? 'order' : 'order unmoved'} ref={list}>
        {order.map((item, place) => (
          <li key={item}>
            <b aria-hidden="true">{place + 1}</b>
            <span>{textOf(item)}</span>
            <Move
              up
              disabled={place === 0}
              label={tell('practicePage.earlier', { item: textOf(item) })}
              onMove={() => move(place, place - 1)}
            />
            <Move
              disabled={place === order.length - 1}
              label={tell('practicePage.later', { item: textOf(item) })}
              onMove={() => move(place, place + 1)}
            />
          </li>
        ))}
      </ol>
      {!moved && (
        <p className="hint off-paper" id={`${id}-unmoved`}>
          {tell('practicePage.unmoved')}
        </p>
      )}
      <p className="spoken" role="status">
        {said}
      </p>
    </fieldset>
  );
}

interface MoveProps {
  readonly up?: boolean;
  readonly disabled: boolean;
  readonly label: string;
  readonly onMove: () => void;
}

function Move({ up = false, disabled, label, onMove }: MoveProps) {
  return (
    <button
      type="button"
      className="button second small"
      disabled={disabled}
      aria-label={label}
      onClick={onMove}
    >
      <svg viewBox="0 0 20 24" width="20" height="24" aria-hidden="true" focusable="false">
        <g transform={up ? undefined : 'rotate(180 10 12)'}>
          <path d="M10 22V8" stroke="currentColor" strokeWidth="2.5" />
          <path d="M10 1L4.5 12H15.5Z" fill="currentColor" />
        </g>
      </svg>
    </button>
  );
}
