import { type RefObject, useState } from 'react';
import type { AnswersFile } from '../../../practice/sheet.ts';
import type { About } from '../../sheetAbout.ts';
import { answersName } from '../../sheetFiles.ts';
import type { Tell } from '../../speak.ts';
import { Arrow } from '../Arrow.tsx';
import { HandOut } from './HandOut.tsx';

interface Props {
  readonly about: About;
  readonly file: AnswersFile;
  /** How they were handed over in this visit; after a reload nobody knows. */
  readonly how: 'file' | 'code' | undefined;
  readonly top: RefObject<HTMLHeadingElement | null>;
  readonly witnessPage: string;
  readonly onSave: () => void;
  readonly onLook: () => void;
  readonly onAway: () => void;
  readonly tell: Tell;
}

/** The answers as they leave the device: a file, a link, a code. Nothing is lost until the sheet is put away. */
export function HandedOver({ about, file, how, top, witnessPage, onSave, onLook, onAway, tell }: Props) {
  const [shown, setShown] = useState(how === 'code');
  const saved = how === 'file';
  return (
    <>
      <section className="answer" role="status">
        <p className="label">{tell('answerPage.handedLabel', about)}</p>
        <h2 className="huge" ref={top} tabIndex={-1}>
          {tell(saved ? 'answerPage.handed' : 'handing.handAnswers')}
        </h2>
        <p className="wrap-id">
          {saved
            ? tell('answerPage.handLineFile', { name: answersName(file) })
            : tell('handing.handAnswersLine')}
        </p>
      </section>
      {shown ? (
        <HandOut
          mark="answers"
          json={file}
          page={witnessPage}
          label={tell('handing.answersCode', about)}
          opens={tell('handing.answersOpens', about)}
          tell={tell}
        />
      ) : (
        <p className="way">
          <button type="button" className="as-link offer" onClick={() => setShown(true)}>
            {tell('handing.show')}
          </button>
        </p>
      )}
      <p className="way">
        <button type="button" className="as-link offer" onClick={onSave}>
          {tell(saved ? 'answerPage.again' : 'handing.saveFile')}
        </button>
      </p>
      <p className="way">
        <button type="button" className="as-link offer" onClick={onLook}>
          {tell('answerPage.lookAgain')}
        </button>
      </p>
      <div className="buttons">
        <button type="button" className="button" onClick={onAway}>
          {tell('answerPage.away')} <Arrow />
        </button>
      </div>
      <p className="note">{tell('answerPage.awayLine')}</p>
    </>
  );
}
