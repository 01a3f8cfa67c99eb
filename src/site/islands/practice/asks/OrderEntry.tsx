import { useId, useRef, useState } from 'react';
import { unbroken } from '../../../speak.ts';
import type { EntryProps } from './entry.ts';

/** Rows that move up and down by buttons: no dragging, so gloves and keyboard do as well. Blank until the first move. */
export function OrderEntry({ ask, answer, onAnswer, tell }: EntryProps<readonly string[]>) {
  const id = useId();
  const list = useRef<HTMLOListElement>(null);
  const [said, setSaid] = useState('');
  const items = ask.items ?? [];
  const moved = answer !== undefined;
  const order = moved ? answer : items.map((item) => item.id);
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
