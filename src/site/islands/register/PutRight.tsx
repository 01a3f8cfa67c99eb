import { useState } from 'react';
import type { AnswersFile } from '../../../practice/sheet.ts';
import { correct } from '../../../register/acts/correct.ts';
import type { Json } from '../../../register/canonical.ts';
import type { KeyFile } from '../../../register/keyFile.ts';
import { GivenError } from '../../../trade/given.ts';
import { signHere } from '../../device/sign.ts';
import { shortKey } from '../../shortKey.ts';
import type { Tell } from '../../speak.ts';
import { TextField } from '../TextField.tsx';
import { useDoing } from './Doing.tsx';
import { FileEntry } from './FileEntry.tsx';
import { loadGrader } from './loadGrader.ts';
import { emptyPassphrase } from './Passphrase.tsx';
import { SignForm } from './SignForm.tsx';

interface Props {
  readonly deviceKey: KeyFile;
  readonly entry: string;
  /** Whose check it is, and of which task: the answers have to be of both. */
  readonly of: { readonly person: string; readonly task: string };
  readonly me: string;
  readonly lang: string;
  readonly onDone: (entry: string) => Promise<void>;
  readonly tell: Tell;
}

/** Puts other answers in the place of those a check was signed with; they are graded again before it is signed. */
export function PutRight({ deviceKey, entry, of, me, lang, onDone, tell }: Props) {
  const [why, setWhy] = useState('');
  const [answers, setAnswers] = useState<AnswersFile>();
  const doing = useDoing(tell);
  const said = why.trim();
  const take = async (text: string) => {
    const { readAnswers, regradeIn } = await loadGrader();
    const read = readAnswers(text);
    regradeIn(lang)(read as unknown as Json, of);
    setAnswers(read);
  };
  const sign = async (passphrase: string) => {
    if (answers === undefined) return;
    let written = '';
    const good = await doing.run(async () => {
      const unwritten = emptyPassphrase(passphrase, tell);
      if (unwritten.length > 0) throw new GivenError(unwritten);
      const regrade = (await loadGrader()).regradeIn(lang);
      const given = { entry, evidence: answers as unknown as Json, why: said };
      written = await signHere(deviceKey, passphrase, (register, how) =>
        correct(register, given, how, regrade),
      );
      return '';
    });
    if (good) await onDone(written);
  };
  const cannot = [
    ...(answers === undefined ? [tell('ownEntries.answersMissing')] : []),
    ...(said === '' ? [tell('ownEntries.whyMissing')] : []),
  ];
  return (
    <section>
      <h3>{tell('ownEntries.putRight')}</h3>
      <p>{tell('ownEntries.putRightLine')}</p>
      <SignForm
        id="put-right-pass"
        says={
          answers === undefined || said === ''
            ? undefined
            : tell('ownEntries.putRightSays', {
                me,
                entry: shortKey(entry),
                bench: answers.bench,
                device: answers.device,
                why: said,
              })
        }
        cannot={cannot}
        me={me}
        doing={doing}
        onSign={(passphrase) => void sign(passphrase)}
        tell={tell}
      >
        <FileEntry label={tell('ownEntries.answersFile')} onText={take} tell={tell} />
        {answers !== undefined && (
          <p role="status">
            {tell('ownEntries.answersRead', {
              person: answers.person,
              bench: answers.bench,
              device: answers.device,
            })}
          </p>
        )}
        <TextField
          id="put-right-why"
          label={tell('ownEntries.why')}
          value={why}
          onValue={setWhy}
          hint={tell('ownEntries.whyHint')}
        />
      </SignForm>
    </section>
  );
}
