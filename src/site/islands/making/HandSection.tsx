import { useState } from 'react';
import { passRuleOf, ruleFaults } from '../../../practice/passRule/rule.ts';
import type { Sheet } from '../../../practice/sheet.ts';
import { sheetForm, sheetYaml } from '../../../practice/sheetForm.ts';
import { saveFile } from '../../device/files.ts';
import { type Draft, drawsOf, MOST_PRINTED } from '../../making/draft.ts';
import type { Tell } from '../../speak.ts';
import { wholeIn } from '../../whole.ts';
import { Arrow } from '../Arrow.tsx';
import { HandOut } from '../register/HandOut.tsx';
import { TextField } from '../TextField.tsx';
import type { Printed } from './PrintedSet.tsx';

interface Props {
  readonly draft: Draft;
  readonly sheet: Sheet | undefined;
  readonly taken: readonly number[];
  readonly onDraft: (draft: Draft) => void;
  readonly onPrint: (what: Printed) => void;
  readonly answerPage: string;
  readonly tell: Tell;
}

/** Number and benches, then the ways in which a sheet leaves this device. */
export function HandSection({ draft, sheet, taken, onDraft, onPrint, answerPage, tell }: Props) {
  const [number, setNumber] = useState<string>();
  const [benches, setBenches] = useState<string>();
  const [saved, setSaved] = useState('');
  const numberText = number ?? String(draft.number);
  const benchesText = benches ?? String(draft.benches);
  const readNumber = wholeIn(numberText, 9999);
  const badNumber =
    readNumber === undefined
      ? tell('making.numberBad')
      : taken.includes(readNumber)
        ? tell('making.numberTaken')
        : undefined;
  const badBenches =
    wholeIn(benchesText, MOST_PRINTED) === undefined
      ? tell('making.benchesBad', { most: MOST_PRINTED })
      : undefined;
  const sound =
    sheet !== undefined &&
    badNumber === undefined &&
    ruleFaults(passRuleOf(sheet.rule), drawsOf(sheet)).length === 0;
  const save = (name: string, text: string) => {
    saveFile(name, text);
    setSaved(name);
  };
  return (
    <section>
      <h2 className="view-title">{tell('making.hand')}</h2>
      <div className="fields two">
        <TextField
          id="made-number"
          label={tell('making.number')}
          value={numberText}
          onValue={(text) => {
            setNumber(text);
            const read = wholeIn(text, 9999);
            if (read !== undefined) onDraft({ ...draft, number: read });
          }}
          hint={tell('making.numberHint')}
          fault={badNumber}
          inputMode="numeric"
        />
        <TextField
          id="made-benches"
          label={tell('making.benches')}
          value={benchesText}
          onValue={(text) => {
            setBenches(text);
            const read = wholeIn(text, MOST_PRINTED);
            if (read !== undefined) onDraft({ ...draft, benches: read });
          }}
          hint={tell('making.benchesHint')}
          fault={badBenches}
          inputMode="numeric"
        />
      </div>
      <p className="note">{tell('making.fix')}</p>
      {sound && (
        <>
          <HandOut
            mark="set"
            json={{ v: 1, kind: 'sheet', of: sheetForm(sheet) }}
            page={answerPage}
            label={tell('making.code', { number: draft.number })}
            opens={tell('making.opens', { number: draft.number })}
            tell={tell}
          />
          <div className="buttons">
            <button className="button" type="button" onClick={() => onPrint('sheets')}>
              {draft.benches === 1
                ? tell('making.printOne')
                : tell('making.print', { benches: draft.benches })}{' '}
              <Arrow />
            </button>
            <button className="button second" type="button" onClick={() => onPrint('key')}>
              {tell('making.printKey')} <Arrow />
            </button>
          </div>
          <p className="way">
            <button
              type="button"
              className="as-link"
              onClick={() =>
                save(
                  `${sheet.id}.json`,
                  `${JSON.stringify({ v: 1, kind: 'sheet', of: sheetForm(sheet) }, null, 2)}\n`,
                )
              }
            >
              {tell('making.file')}
            </button>{' '}
            <button
              type="button"
              className="as-link"
              onClick={() => save(`${sheet.id}.yaml`, sheetYaml(sheetForm(sheet)))}
            >
              {tell('making.yaml')}
            </button>
          </p>
          <p role="status">{saved !== '' && tell('making.saved', { name: saved })}</p>
          <p className="note">{tell('making.yamlNote')}</p>
        </>
      )}
    </section>
  );
}
