import type { RefObject } from 'react';
import type { About } from '../../sheetAbout.ts';
import type { Tell } from '../../speak.ts';
import { Arrow } from '../Arrow.tsx';

interface Props {
  readonly about: About;
  readonly rows: readonly {
    readonly place: number;
    readonly title: string;
    readonly asks: number;
    readonly written: number;
  }[];
  readonly top: RefObject<HTMLHeadingElement | null>;
  readonly onPlace: (place: number) => void;
  readonly onSave: () => void;
  /** Hands them over without a file: as a code, or a link. */
  readonly onShow: () => void;
  readonly tell: Tell;
}

/** What is written and what is not, before the file is saved. Nothing is marked. */
export function LookOver({ about, rows, top, onPlace, onSave, onShow, tell }: Props) {
  const state = (asks: number, written: number) => {
    if (written === 0) return tell('answerPage.blank');
    return written >= asks
      ? tell('answerPage.written')
      : tell('answerPage.part', { count: written, of: asks });
  };
  return (
    <section>
      <p className="label">{tell('answerPage.placeLabel', about)}</p>
      <h2 ref={top} tabIndex={-1}>
        {tell('answerPage.over')}
      </h2>
      <p className="label">{tell('answerPage.overLabel')}</p>
      <ul className="look-over">
        {rows.map(({ place, title, asks, written }) => (
          <li key={place}>
            <button type="button" className="as-link offer" onClick={() => onPlace(place)}>
              {tell('answerPage.toDraw', { place, title })}
            </button>
            <span>{state(asks, written)}</span>
          </li>
        ))}
      </ul>
      <div className="buttons">
        <button type="button" className="button" onClick={onSave}>
          {tell('answerPage.hand')} <Arrow />
        </button>
        <button type="button" className="button second" onClick={onShow}>
          {tell('handing.show')} <Arrow />
        </button>
      </div>
      <p className="note">{tell('answerPage.handLine')}</p>
    </section>
  );
}
