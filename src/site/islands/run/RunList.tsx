import { useRef, useState } from 'react';
import type { Fault } from '../../../trade/given.ts';
import type { RunFields } from '../../run/fields.ts';
import { mayAdd, missingOf } from '../../run/newRow.ts';
import type { Settings } from '../../settings.ts';
import type { Speak, Tell } from '../../speak.ts';
import { Arrow } from '../Arrow.tsx';
import { FieldsForm, type Values } from './FieldsForm.tsx';

interface Props {
  readonly name: string;
  /** Path of the list in the run. */
  readonly list: string;
  readonly hint?: string;
  readonly rows: readonly Values[];
  readonly line: (row: Values, k: number) => string;
  readonly fields: RunFields;
  readonly fresh: Values;
  readonly faults: readonly Fault[];
  /** The rows changed, by what. */
  readonly onRows: (rows: readonly Values[], how: 'add' | 'change' | 'off', k: number) => void;
  readonly settings: Settings;
  readonly tell: Tell;
  readonly speak: Speak;
}

/** What stands on a run, of one kind: a row each that opens to its fields, and the entry for one more. */
export function RunList({ name, list, hint, rows, line, fields, fresh, faults, onRows, ...more }: Props) {
  const { tell } = more;
  const own = faults.filter(({ field }) => field === list || field.startsWith(`${list}[`));
  const [draft, setDraft] = useState<Values>(fresh);
  const [asked, setAsked] = useState(0);
  const [tried, setTried] = useState(false);
  const [unread, setUnread] = useState<readonly string[]>([]);
  const entry = useRef<HTMLDivElement>(null);
  const missing = missingOf(fields, draft).filter((field) => !unread.includes(field));
  const add = () => {
    if (!mayAdd(fields, draft, unread)) {
      setTried(true);
      // The field at fault, once it says so.
      requestAnimationFrame(() =>
        entry.current?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus(),
      );
      return;
    }
    onRows([...rows, draft], 'add', rows.length);
    setDraft(fresh);
    setTried(false);
    setAsked(asked + 1);
  };
  return (
    <details className="opens" open={own.length > 0 ? true : undefined}>
      <summary>
        {name} <b>{rows.length}</b>
      </summary>
      <div>
        {hint !== undefined && <p className="hint">{hint}</p>}
        {rows.map((row, k) => {
          const path = `${list}[${k}]`;
          const wrong = own.filter(({ field }) => field === path || field.startsWith(`${path}.`));
          return (
            <details
              className="opens inner"
              // biome-ignore lint/suspicious/noArrayIndexKey: rows have no identity but their place
              key={`${rows.length}-${k}`}
              open={wrong.length > 0 ? true : undefined}
            >
              <summary>{line(row, k)}</summary>
              <div>
                <FieldsForm
                  fields={fields}
                  values={row}
                  path={path}
                  faults={wrong}
                  onValues={(values) =>
                    onRows(
                      rows.map((old, i) => (i === k ? values : old)),
                      'change',
                      k,
                    )
                  }
                  {...more}
                />
                <p>
                  <button
                    type="button"
                    className="button second small"
                    onClick={() =>
                      onRows(
                        rows.filter((_, i) => i !== k),
                        'off',
                        k,
                      )
                    }
                  >
                    {tell('yourRun.takeOff', { what: line(row, k) })}
                  </button>
                </p>
              </div>
            </details>
          );
        })}
        <details className="opens inner">
          <summary>{tell('yourRun.oneMore')}</summary>
          <div ref={entry}>
            <FieldsForm
              key={asked}
              fields={fields}
              values={draft}
              path={`${list}[new]`}
              faults={
                tried
                  ? missing.map((field) => ({
                      field: `${list}[new].${field}`,
                      message: tell('yourRun.missing'),
                      todo: tell('yourRun.giveIt'),
                    }))
                  : []
              }
              onValues={setDraft}
              onUnread={setUnread}
              tells="all"
              {...more}
            />
            {tried && !mayAdd(fields, draft, unread) && (
              <p className="message" role="alert">
                <strong>{tell('yourRun.notAdded')}</strong>
              </p>
            )}
            <p>
              <button type="button" className="button second" onClick={add}>
                {tell('yourRun.addIt')} <Arrow />
              </button>
            </p>
          </div>
        </details>
      </div>
    </details>
  );
}
