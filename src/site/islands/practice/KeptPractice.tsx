import { useEffect, useMemo, useState } from 'react';
import type { Attempt } from '../../../practice/attempts.ts';
import { attemptsText, readAttemptsFile } from '../../../practice/attemptsFile.ts';
import type { Fault } from '../../../trade/given.ts';
import { allAttempts, attemptsDevice, dropAttempts, takeAttempts } from '../../device/attempts.ts';
import { dayHere, isKept, now } from '../../device/edge.ts';
import { readFile, saveFile } from '../../device/files.ts';
import { HeldOpen } from '../../device/practiceStore.ts';
import { cameSays, inHand, keptSays } from '../../keptPractice.ts';
import { type Tell, teller, type WordTable } from '../../speak.ts';
import { Arrow } from '../Arrow.tsx';
import { ClearTries } from './ClearTries.tsx';
import { TriesFile } from './TriesFile.tsx';

interface Props {
  readonly words: WordTable;
  /** Families that can be drawn today. */
  readonly families: readonly string[];
}

/** The tries of this device: what is kept, carried off as a file, brought in, cleared after a second look. */
export default function KeptPractice({ words, families }: Props) {
  const tell = useMemo(() => teller(words), [words]);
  const [attempts, setAttempts] = useState<readonly Attempt[] | null>(null);
  const [steady, setSteady] = useState<boolean | undefined>();
  const [said, setSaid] = useState('');
  const look = async () => {
    setAttempts(await allAttempts());
    setSteady(await isKept());
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when script takes the page over
  useEffect(() => {
    look().catch((why: unknown) => setSaid(failure(why, tell)));
  }, []);
  const act = async (doing: () => Promise<string>) => {
    try {
      setSaid(await doing());
      await look();
    } catch (why) {
      setSaid(failure(why, tell));
    }
  };
  const save = () =>
    act(async () => {
      const device = await attemptsDevice();
      const made = new Date(now()).toISOString();
      const text = attemptsText({ device, made, attempts: await allAttempts() });
      saveFile(`practice-${device}-${dayHere(now())}.json`, text);
      return '';
    });
  /** @returns what is wrong with the file, if anything is */
  const bringIn = async (file: File): Promise<readonly Fault[]> => {
    const read = inHand(await readFile(file), readAttemptsFile, tell);
    if (!read.good) return read.faults;
    await act(async () => {
      return cameSays(await takeAttempts(read.value.attempts), read.value.left?.length ?? 0, tell);
    });
    return [];
  };
  const clear = () =>
    act(async () => {
      await dropAttempts();
      return tell('keptPractice.cleared');
    });
  const some = attempts !== null && attempts.length > 0;
  return (
    <div className="off-paper">
      <div role="status">
        {said !== '' && (
          <p>
            <strong>{said}</strong>
          </p>
        )}
        {attempts !== null &&
          keptSays(attempts, families, steady, dayHere, tell).map((text) => <p key={text}>{text}</p>)}
      </div>
      {some && (
        <>
          <h2 className="view-title">{tell('keptPractice.off')}</h2>
          <p>{tell('keptPractice.offHint')}</p>
          <div className="buttons">
            <button type="button" className="button" onClick={() => void save()}>
              {tell('keptPractice.save')} <Arrow />
            </button>
          </div>
        </>
      )}
      <h2 className="view-title">{tell('keptPractice.in')}</h2>
      <TriesFile onFile={bringIn} tell={tell} />
      {some && (
        <>
          <h2 className="view-title">{tell('keptPractice.clear')}</h2>
          <ClearTries count={attempts.length} onClear={() => void clear()} tell={tell} />
        </>
      )}
    </div>
  );
}

const failure = (why: unknown, tell: Tell): string => {
  if (why instanceof HeldOpen) return tell('practiceList.heldOpen');
  return tell('keptPractice.failed', { why: why instanceof Error ? why.message : String(why) });
};
