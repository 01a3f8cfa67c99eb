import { useEffect, useId, useRef, useState } from 'react';
import { pagePalette } from '../../drawing/palette.ts';
import { drawSection } from '../../drawing/section.ts';
import type { Tray } from '../../run/catalogue.ts';
import type { FillResult } from '../../trade/fill.ts';
import { EDITIONS, type FillTables } from '../../trade/fillTables.ts';
import {
  type CableRow,
  type FillFields,
  fillLines,
  fillSum,
  rowFaults,
  rowsShown,
  standsAbove,
  unlettered,
  widthsOf,
} from '../cables.ts';
import { measure, measureText } from '../calculators/measure.ts';
import { type Speak, speaker, type Tell, teller, type WordTable } from '../speak.ts';
import { Arrow } from './Arrow.tsx';
import { useExample } from './example.ts';
import { Figure } from './Figure.tsx';
import { FillRows } from './FillRows.tsx';
import { useTakenOver } from './taken.ts';
import { useSettings } from './useSettings.ts';
import { Sources, Worked } from './Worked.tsx';

interface Props {
  readonly words: WordTable;
  readonly tables: FillTables;
  /** Trays of the catalogue by inside width in inches, for the figure. */
  readonly trays: readonly { readonly widthIn: number; readonly tray: Tray }[];
  readonly example: FillFields;
}

const spares = [0, 10, 20, 25, 30, 40, 50] as const;

/** Whether these cables may lie in this channel: the verdict, the section drawn, the working, where the limit stands. */
export default function FillSheet({ words, tables, trays, example }: Props) {
  const speak = speaker(words);
  const tell = teller(words);
  const form = useRef<HTMLFormElement>(null);
  const [fields, setFields] = useState<FillFields>(example);
  const set = (part: Partial<FillFields>) => setFields((old) => ({ ...old, ...part }));
  useTakenOver(form, (values) => setFields((old) => takeOver(old, values)));
  const settings = useSettings(example.edition);
  // The edition of the device, while nobody has chosen one here.
  useEffect(
    () => setFields((old) => (old.edition === example.edition ? { ...old, edition: settings.edition } : old)),
    [example.edition, settings.edition],
  );

  const sum = fillSum(fields, tables);
  const tray = trays.find(({ widthIn }) => widthIn === fields.tray.widthIn)?.tray;
  const given =
    sum === undefined || tray === undefined || sum.drawn.length === 0
      ? undefined
      : { tray: { ...tray, bottom: fields.tray.bottom }, cables: sum.drawn };
  // The example in the device's edition is the example still.
  const isExample = useExample(
    [example.edition, settings.edition].some(
      (edition) => JSON.stringify(fields) === JSON.stringify({ ...example, edition }),
    ),
  );
  const said = (text: string) => (isExample ? tell('fillSheet.example', { text }) : text);

  return (
    <>
      <section className="answer" aria-live="polite" id="fill-answer">
        <p className="label">
          {said(
            tell('fillSheet.asked', {
              width: fields.tray.widthIn,
              bottom: tell(`fillSheet.${fields.tray.bottom}`),
            }),
          )}
        </p>
        {sum === undefined ? (
          <p className="huge">{tell('fillSheet.nothing')}</p>
        ) : (
          <Lines result={sum.answer.result} fields={fields} said={said} speak={speak} tell={tell} />
        )}
        <p className="at-phone change">
          <a className="button second" href="#fill-given">
            {tell('fillSheet.change')} <Arrow />
          </a>
        </p>
      </section>
      <div className="columns">
        <div>
          {given !== undefined && (
            <Figure
              caption={[
                tell('fillSheet.caption'),
                ...(standsAbove(given) ? [tell('fillSheet.above')] : []),
                ...(unlettered(given) ? [tell('fillSheet.unlettered')] : []),
              ].join(' ')}
              drawings={(['phone', 'desk'] as const).map((draft) =>
                drawSection(given, { form: draft, palette: pagePalette, speak }),
              )}
            />
          )}
          {sum !== undefined && (
            <>
              <FillRows
                shown={rowsShown(sum.answer.result, fields.tray, tables)}
                table={sum.answer.result.table}
                bottom={tell(`fillSheet.${fields.tray.bottom}`)}
                tell={tell}
              />
              <h2 className="view-title">{tell('fillSheet.sum')}</h2>
              <Worked steps={sum.answer.steps} speak={speak} tell={tell} />
              <h2 className="view-title">{tell('fillSheet.sources')}</h2>
              <Sources sources={sum.answer.sources} tell={tell} />
            </>
          )}
        </div>
        <form ref={form} id="fill-given" className="off-paper" onSubmit={(event) => event.preventDefault()}>
          <h2 className="view-title">{tell('fillSheet.yours')}</h2>
          <Channel fields={fields} set={set} widths={widthsOf(tables)} tell={tell} />
          <Cables rows={fields.rows} onRows={(rows) => set({ rows })} tell={tell} />
          <Rules fields={fields} set={set} tell={tell} />
          <p className="at-phone">
            <a className="button" href="#fill-answer">
              {tell('fillSheet.workOut')} <Arrow />
            </a>
          </p>
        </form>
      </div>
    </>
  );
}

interface LinesProps {
  readonly result: FillResult;
  readonly fields: FillFields;
  readonly said: (text: string) => string;
  readonly speak: Speak;
  readonly tell: Tell;
}

/** The answer: the number against the table's number, whose number that is, and the share last and small. */
function Lines({ result, fields, said, speak, tell }: LinesProps) {
  const { verdict, more, share } = fillLines(result, fields);
  const settings = useSettings();
  const inMetric = (area: number) =>
    measureText(measure('in2', area), { ...settings, metric: 'instead' }, tell);
  return (
    <>
      <p className="huge">{said(tell(verdict.key, verdict.values))}</p>
      {result.why?.map((say) => (
        <p key={say.say}>{speak(say)}</p>
      ))}
      {more.map(({ key, values }) => (
        <p key={key}>{tell(key, values)}</p>
      ))}
      {settings.metric !== 'none' && result.allowedIn2 !== null && (
        <p>
          {tell('fillSheet.metric', {
            used: inMetric(result.areaIn2),
            usable: inMetric(result.allowedIn2 * (1 - fields.spare / 100)),
          })}
        </p>
      )}
      {share !== undefined && <p className="label">{tell(share.key, share.values)}</p>}
    </>
  );
}

/** What stood in the fields before script came. */
function takeOver(old: FillFields, values: FormData): FillFields {
  const text = (name: string) => String(values.get(name) ?? '');
  return {
    tray: {
      bottom: text('bottom') === 'solid' ? 'solid' : 'ventilated',
      widthIn: Number(text('width')) || old.tray.widthIn,
    },
    rows: old.rows.map((row) => ({
      ...row,
      make: text(`make-${row.id}`) === 'single' ? 'single' : 'multiconductor',
      od: text(`od-${row.id}`),
      count: text(`count-${row.id}`),
    })),
    qualifiedOnly: values.has('qualified'),
    spare: Number(text('spare')) || 0,
    edition: EDITIONS.find((year) => String(year) === text('edition')) ?? old.edition,
  };
}

interface PartProps {
  readonly fields: FillFields;
  readonly set: (part: Partial<FillFields>) => void;
  readonly tell: Tell;
}

function Channel({ fields, set, widths, tell }: PartProps & { readonly widths: readonly number[] }) {
  const id = useId();
  return (
    <>
      <fieldset>
        <legend>{tell('fillSheet.bottom')}</legend>
        {(['ventilated', 'solid'] as const).map((bottom) => (
          <label className="choice" key={bottom}>
            <input
              type="radio"
              name="bottom"
              value={bottom}
              checked={fields.tray.bottom === bottom}
              onChange={() => set({ tray: { ...fields.tray, bottom } })}
            />
            <i />
            {tell(`fillSheet.${bottom}Floor`)}
          </label>
        ))}
      </fieldset>
      <p>
        <label htmlFor={`${id}-width`}>{tell('fillSheet.width')}</label>
        <select
          id={`${id}-width`}
          name="width"
          value={fields.tray.widthIn}
          onChange={(event) => set({ tray: { ...fields.tray, widthIn: Number(event.currentTarget.value) } })}
        >
          {widths.map((width) => (
            <option key={width} value={width}>
              {tell('fillSheet.widthIn', { width })}
            </option>
          ))}
        </select>
      </p>
    </>
  );
}

interface CablesProps {
  readonly rows: readonly CableRow[];
  readonly onRows: (rows: readonly CableRow[]) => void;
  readonly tell: Tell;
}

function Cables({ rows, onRows, tell }: CablesProps) {
  const id = useId();
  const next = rows.reduce((most, row) => Math.max(most, row.id), 0) + 1;
  const change = (row: CableRow, part: Partial<CableRow>) =>
    onRows(rows.map((other) => (other.id === row.id ? { ...row, ...part } : other)));
  return (
    <fieldset>
      <legend>{tell('fillSheet.cables')}</legend>
      <ol className="cable-rows">
        {rows.map((row, k) => {
          const faults = rowFaults(row);
          const name = (part: string) => `${id}-${part}-${row.id}`;
          return (
            <li key={row.id}>
              <p className="label">{tell('fillSheet.cable', { number: k + 1 })}</p>
              <div className="cable-fields">
                <div>
                  <label htmlFor={name('count')}>{tell('fillSheet.count')}</label>
                  <input
                    id={name('count')}
                    name={`count-${row.id}`}
                    type="text"
                    inputMode="numeric"
                    autoComplete="off"
                    value={row.count}
                    aria-invalid={faults.count === undefined ? undefined : true}
                    aria-describedby={name('message')}
                    onChange={(event) => change(row, { count: event.currentTarget.value })}
                  />
                </div>
                <div>
                  <label htmlFor={name('od')}>{tell('fillSheet.od')}</label>
                  <input
                    id={name('od')}
                    name={`od-${row.id}`}
                    type="text"
                    inputMode="decimal"
                    autoComplete="off"
                    value={row.od}
                    aria-invalid={faults.od === undefined ? undefined : true}
                    aria-describedby={name('message')}
                    onChange={(event) => change(row, { od: event.currentTarget.value })}
                  />
                </div>
                <div className="make">
                  <label htmlFor={name('make')}>{tell('fillSheet.make')}</label>
                  <select
                    id={name('make')}
                    name={`make-${row.id}`}
                    value={row.make}
                    onChange={(event) =>
                      change(row, {
                        make: event.currentTarget.value === 'single' ? 'single' : 'multiconductor',
                      })
                    }
                  >
                    <option value="multiconductor">{tell('fillSheet.multiconductor')}</option>
                    <option value="single">{tell('fillSheet.single')}</option>
                  </select>
                </div>
              </div>
              <p className="message" id={name('message')}>
                {[faults.count, faults.od].map(
                  (key) => key !== undefined && <strong key={key}>{tell(key)} </strong>,
                )}
              </p>
              {rows.length > 1 && (
                <button
                  type="button"
                  className="as-link offer"
                  onClick={() => onRows(rows.filter((other) => other.id !== row.id))}
                >
                  {tell('fillSheet.takeOut', { number: k + 1 })}
                </button>
              )}
            </li>
          );
        })}
      </ol>
      <button
        type="button"
        className="as-link offer"
        onClick={() => onRows([...rows, { id: next, make: 'multiconductor', od: '', count: '1' }])}
      >
        {tell('fillSheet.add')}
      </button>
    </fieldset>
  );
}

function Rules({ fields, set, tell }: PartProps) {
  const id = useId();
  return (
    <>
      <label className="choice">
        <input
          type="checkbox"
          name="qualified"
          checked={fields.qualifiedOnly}
          onChange={(event) => set({ qualifiedOnly: event.currentTarget.checked })}
        />
        <i />
        {tell('fillSheet.qualified')}
      </label>
      <div className="pair rules">
        <div>
          <label htmlFor={`${id}-spare`}>{tell('fillSheet.spare')}</label>
          <select
            id={`${id}-spare`}
            name="spare"
            value={fields.spare}
            onChange={(event) => set({ spare: Number(event.currentTarget.value) })}
          >
            {spares.map((share) => (
              <option key={share} value={share}>
                {tell(share === 0 ? 'fillSheet.noSpare' : 'fillSheet.spareShare', { share })}
              </option>
            ))}
          </select>
        </div>
        <div>
          <label htmlFor={`${id}-edition`}>{tell('fillSheet.edition')}</label>
          <select
            id={`${id}-edition`}
            name="edition"
            value={fields.edition}
            onChange={(event) =>
              set({
                edition:
                  EDITIONS.find((year) => String(year) === event.currentTarget.value) ?? fields.edition,
              })
            }
          >
            {[...EDITIONS].reverse().map((year) => (
              <option key={year} value={year}>
                {year}
              </option>
            ))}
          </select>
        </div>
      </div>
    </>
  );
}
