import { type RefObject, useMemo, useRef } from 'react';
import type { Draw } from '../../../practice/draw.ts';
import type { World } from '../../../practice/model.ts';
import { tellDraw } from '../../../practice/show.ts';
import type { Language } from '../../../practice/words.ts';
import { type Given, textParts } from '../../practice.ts';
import { type Speak, type Tell, unbroken, type Values } from '../../speak.ts';
import { Arrow } from '../Arrow.tsx';
import { AskEntry } from '../practice/asks/AskEntry.tsx';
import { DrawFigures } from '../practice/DrawFigures.tsx';
import { Known } from '../practice/Known.tsx';
import { heldBy } from '../practice/unread.ts';

interface Props {
  readonly draw: Draw;
  readonly place: number;
  /** Number of the sheet, bench, person, draws: for the label. */
  readonly about: Values & { readonly draws: number };
  readonly world: World;
  readonly language: Language;
  readonly given: Given;
  readonly onGiven: (given: Given) => void;
  /** To another place; one past the last is the look over all. */
  readonly onPlace: (place: number) => void;
  readonly top: RefObject<HTMLHeadingElement | null>;
  readonly tell: Tell;
  readonly speak: Speak;
}

/** One draw of a sheet, with the entries of the practice page and no verdict. */
export function AnswerDraw(props: Props) {
  const { draw, place, about, world, language, given, onGiven, onPlace, top, tell, speak } = props;
  const shown = useMemo(() => tellDraw(draw, world, language), [draw, world, language]);
  // Several entries report what they read as they come up; each builds on what the one before it has just said.
  const latest = useRef(given);
  const answer = (id: string, value: Given[string] | undefined) => {
    if (latest.current[id] === value) return;
    const { [id]: _, ...others } = latest.current;
    latest.current = value === undefined ? others : { ...others, [id]: value };
    onGiven(latest.current);
  };
  return (
    <section>
      <p className="label">{tell('answerPage.placeLabel', about)}</p>
      <h2 ref={top} tabIndex={-1}>
        {tell('answerPage.place', { place, draws: about.draws })}
      </h2>
      <p className="lead">{unbroken(textParts(shown.text).lead)}</p>
      <div className="columns draw">
        <div>
          <DrawFigures draw={draw} world={world} language={language} />
        </div>
        <div>
          <Known shown={shown} heading="h3" tell={tell} />
        </div>
        <form
          className="asks"
          onSubmit={(event) => {
            event.preventDefault();
            // A blank may stand; what is written and cannot be read is mended first.
            if (heldBy(event.currentTarget) !== 'unread') onPlace(place + 1);
          }}
        >
          {shown.asks.map((ask) => (
            <AskEntry
              key={ask.id}
              ask={ask}
              answer={given[ask.id]}
              onAnswer={(value) => answer(ask.id, value)}
              draw={draw}
              within={ask.id}
              world={world}
              tell={tell}
              speak={speak}
            />
          ))}
          <div className="buttons">
            <button className="button" type="submit">
              {tell(place < about.draws ? 'answerPage.next' : 'answerPage.look')} <Arrow />
            </button>
          </div>
          {place > 1 && (
            <p className="way">
              <button type="button" className="as-link" onClick={() => onPlace(place - 1)}>
                {tell('answerPage.back', { place: place - 1 })}
              </button>
            </p>
          )}
        </form>
      </div>
    </section>
  );
}
