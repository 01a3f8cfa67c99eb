import { useMemo } from 'react';
import { passRuleOf } from '../../../practice/passRule/rule.ts';
import { saysOfDecision, saysOfRule } from '../../../practice/passRule/words.ts';
import {
  type AnswersFile,
  type Practice,
  type Sheet,
  type SheetGrade,
  sheetDraws,
} from '../../../practice/sheet.ts';
import { tellDraw } from '../../../practice/show.ts';
import type { Language } from '../../../practice/words.ts';
import type { Judged } from '../../../register/judged.ts';
import type { TaskMap } from '../../../register/taskMap.ts';
import { answerText, type Given, type Outcome, outcomes, question } from '../../practice.ts';
import type { Tell } from '../../speak.ts';
import { Marked } from '../practice/Marked.tsx';
import { UsedBench } from './UsedBench.tsx';

interface Props {
  readonly sheet: Sheet;
  readonly file: AnswersFile;
  readonly grade: SheetGrade;
  readonly practice: Practice;
  readonly language: Language;
  /** Where it is looked up whether these answers were used before. */
  readonly judged: Judged;
  readonly map: TaskMap;
  readonly tell: Tell;
}

interface Row {
  readonly place: number;
  readonly wanted: string;
  readonly outcome: Outcome;
}

const verdicts = {
  near: 'witness.verdict-near',
  rework: 'witness.verdict-rework',
  blank: 'witness.verdict-blank',
  holds: 'witness.verdict-holds',
  'holds from there': 'witness.verdict-holds-from-there',
} as const;

/** Answers graded again from the sheet's seed: those that do not hold first, the rest in one row that opens. */
export function Graded({ sheet, file, grade, practice, language, judged, map, tell }: Props) {
  const rows = useMemo(
    () =>
      sheetDraws(sheet, grade.bench, practice).flatMap(({ draw, place }): readonly Row[] => {
        const graded = grade.draws.find((one) => one.place === place);
        if (graded === undefined) return [];
        const given = file.answers.find(({ seed }) => seed === graded.seed)?.answers ?? {};
        return outcomes(tell, tellDraw(draw, practice.world, language).asks, graded, given as Given).map(
          (outcome) => ({
            place: graded.place,
            wanted: answerText(tell, outcome.ask, draw.right[outcome.ask.id]),
            outcome,
          }),
        );
      }),
    [sheet, grade, file, practice, language, tell],
  );
  const open = rows.filter(({ outcome }) => outcome.finding.verdict !== 'holds');
  const held = rows.filter(({ outcome }) => outcome.finding.verdict === 'holds');
  const rule = saysOfRule(passRuleOf(sheet.rule), grade.draws.length);
  const [result, ...shown] = saysOfDecision(grade);
  return (
    <>
      {open.length > 0 && (
        <table className="graded">
          <thead>
            <tr>
              <th scope="col">{tell('witness.draw')}</th>
              <th scope="col">{tell('witness.wanted')}</th>
              <th scope="col">{tell('witness.given')}</th>
            </tr>
          </thead>
          {open.map(({ place, wanted, outcome }) => (
            <tbody key={`${place}-${outcome.ask.id}`}>
              <tr className="asked-row">
                <th scope="row">
                  {place} <span className="label">{tell(verdicts[outcome.finding.verdict])}</span>
                </th>
                <td className="dim">{wanted}</td>
                <td>
                  <Marked outcome={outcome} tell={tell} />
                </td>
              </tr>
              <tr className="says-row">
                <td colSpan={3}>
                  <strong>{question(outcome.ask)}</strong>
                  {outcome.finding.verdict !== 'blank' && ` ${outcome.finding.says}`}
                </td>
              </tr>
            </tbody>
          ))}
        </table>
      )}
      <details className="opens">
        <summary>
          {tell('witness.hold')} <b>{tell('witness.holdCount', { held: held.length, of: rows.length })}</b>
        </summary>
        <div>
          <ul className="holding">
            {held.map(({ place, outcome }) => (
              <li key={`${place}-${outcome.ask.id}`}>
                <span>{tell('witness.asks', { place, prompt: question(outcome.ask) })}</span>
                <Marked outcome={outcome} tell={tell} />
              </li>
            ))}
          </ul>
        </div>
      </details>
      <p className="note">
        {tell('witness.rule')} {rule.map(language.speak).join(' ')}
      </p>
      <p className="note">
        <strong>{result && language.speak(result)}</strong> {shown.map(language.speak).join(' ')}
      </p>
      <UsedBench judged={judged} map={map} answers={file} speak={language.speak} tell={tell} />
    </>
  );
}
