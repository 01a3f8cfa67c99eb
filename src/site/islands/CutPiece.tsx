import { useRef, useState } from 'react';
import { pagePalette } from '../../drawing/palette.ts';
import { drawPiece } from '../../drawing/piece.ts';
import type { HoleRow } from '../../run/catalogue.ts';
import { cutAtHole } from '../../run/clearPlaces.ts';
import { formatLength, type Ticks } from '../../trade/length.ts';
import { speaker, teller, type WordTable } from '../speak.ts';
import { pieceSum } from '../sums.ts';
import { lengthOf } from '../tape.ts';
import { tried } from '../tried.ts';
import { Arrow } from './Arrow.tsx';
import { useExample } from './example.ts';
import { FeetInches } from './FeetInches.tsx';
import { Figure } from './Figure.tsx';
import { HoleLine, HoleSum } from './Holes.tsx';
import { InMetric } from './InMetric.tsx';
import { OnePiece } from './OnePiece.tsx';
import { useTakenOver } from './taken.ts';
import { Sources, Worked } from './Worked.tsx';

interface Props {
  readonly words: WordTable;
  /** The example that the sheet shows before anyone writes. */
  readonly measured: Ticks;
  readonly insertion: Ticks;
  readonly stock: Ticks;
  /** Along the floor of the channel that is cut. */
  readonly holes: HoleRow;
}

const endCounts = [0, 1, 2] as const;

/** One piece: measured from the beginning or from splice edge to splice edge; the cut, the figure, the sum both ways. */
export default function CutPiece({ words, measured, insertion, stock, holes }: Props) {
  const speak = speaker(words);
  const tell = teller(words);
  const [length, setLength] = useState<Ticks | null>(measured);
  const [goesIn, setGoesIn] = useState<Ticks | null>(insertion);
  const [stockLength, setStockLength] = useState<Ticks | null>(stock);
  const [ends, setEnds] = useState<0 | 1 | 2>(1);
  const form = useRef<HTMLFormElement>(null);
  useTakenOver(form, (values) =>
    setEnds(endCounts.find((count) => String(count) === values.get('ends')) ?? 1),
  );

  const example = useExample(
    length === measured && goesIn === insertion && stockLength === stock && ends === 1,
  );
  const said = (text: string) => (example ? tell('cutSheet.example', { text }) : text);
  const given =
    length === null || goesIn === null || stockLength === null
      ? undefined
      : { toSpliceEdge: length, insertedEnds: ends, insertion: goesIn, stock: stockLength };
  const sum = given === undefined ? undefined : tried(() => pieceSum(given));
  const good = sum?.good === true ? sum.value : undefined;
  const atHole =
    good === undefined || given === undefined ? null : cutAtHole(good.piece.cut, holes, given.stock);

  return (
    <>
      <section className="answer under" aria-live="polite" id="piece-answer">
        {good === undefined || given === undefined ? (
          <p className="huge">{tell('cutSheet.nothing')}</p>
        ) : (
          <>
            <p className="label">
              {said(tell(`cutSheet.asked${ends}`, { measured: formatLength(given.toSpliceEdge) }))}
            </p>
            <p className="huge">{said(tell('cutSheet.cutTo', { text: good.answer.result.text }))}</p>
            <p>
              {tell(good.answer.result.fitsStock ? 'cutSheet.fits' : 'cutSheet.tooLong', {
                stock: formatLength(given.stock),
              })}
            </p>
            <InMetric inches={good.answer.result.cutIn} tell={tell} />
            {atHole !== null && <HoleLine found={atHole} holes={holes} tell={tell} />}
          </>
        )}
        <p className="at-phone change">
          <a className="button second" href="#piece-measured">
            {tell('cutSheet.change')} <Arrow />
          </a>
        </p>
      </section>
      <div className="columns">
        <div>
          {good !== undefined && (
            <Figure
              caption={tell('cutSheet.pieceCaption')}
              drawings={(['phone', 'desk'] as const).map((form) =>
                drawPiece(
                  { leg: good.leg, piece: good.piece.number, insertion: 'shown', cut: 'shown' },
                  { form, palette: pagePalette, speak },
                ),
              )}
            />
          )}
          <h3 className="view-title">{tell('cutSheet.sum')}</h3>
          {good === undefined ? (
            <p>{tell('cutSheet.nothing')}</p>
          ) : (
            <Worked steps={good.answer.steps} speak={speak} tell={tell} />
          )}
          {atHole !== null && <HoleSum found={atHole} speak={speak} tell={tell} />}
          <h3 className="view-title">{tell('cutSheet.sources')}</h3>
          {good !== undefined && <Sources sources={good.answer.sources} tell={tell} />}
        </div>
        <form
          ref={form}
          id="piece-measured"
          className="off-paper"
          onSubmit={(event) => event.preventDefault()}
        >
          <h3 className="view-title">{tell('cutSheet.yours')}</h3>
          <fieldset>
            <legend>{tell('cutSheet.ends')}</legend>
            {endCounts.map((count) => (
              <label className="choice" key={count}>
                <input
                  type="radio"
                  name="ends"
                  value={count}
                  checked={ends === count}
                  onChange={() => setEnds(count)}
                />
                <i />
                {tell(`cutSheet.ends${count}`)}
              </label>
            ))}
          </fieldset>
          <FeetInches
            legend={tell(ends === 2 ? 'cutSheet.edgeToEdge' : 'cutSheet.fromBeginning')}
            initial={measured}
            onReading={(reading) => setLength(lengthOf(reading))}
            tell={tell}
            speak={speak}
          />
          <p className="hint paste">
            <OnePiece text={tell('entry.paste')} />
          </p>
          <FeetInches
            legend={tell('cutSheet.insertion')}
            initial={insertion}
            onReading={(reading) => setGoesIn(lengthOf(reading))}
            tell={tell}
            speak={speak}
            scale="inches"
          />
          <FeetInches
            legend={tell('cutSheet.stock')}
            initial={stock}
            onReading={(reading) => setStockLength(lengthOf(reading))}
            tell={tell}
            speak={speak}
            tape={false}
          />
          <p className="at-phone">
            <a className="button" href="#piece-answer">
              {tell('cutSheet.workOut')} <Arrow />
            </a>
          </p>
        </form>
      </div>
    </>
  );
}
