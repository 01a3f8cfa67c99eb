import { useEffect, useState } from 'react';
import { passRuleOf } from '../../../practice/passRule/rule.ts';
import { saysOfRule } from '../../../practice/passRule/words.ts';
import type { Practice, Sheet } from '../../../practice/sheet.ts';
import { sheetForm } from '../../../practice/sheetForm.ts';
import type { Language } from '../../../practice/words.ts';
import { drawsOf } from '../../making/draft.ts';
import type { Speak, Tell } from '../../speak.ts';
import { useDrawer } from '../register/useCodes.ts';
import { useLink } from '../register/useLink.ts';
import { BenchKey } from './BenchKey.tsx';
import { BenchSheet } from './BenchSheet.tsx';

export type Printed = 'sheets' | 'key';

interface Props {
  readonly what: Printed;
  readonly sheet: Sheet;
  readonly benches: number;
  readonly practice: Practice;
  readonly language: Language;
  readonly answerPage: string;
  readonly onPrinted: () => void;
  readonly speak: Speak;
  readonly tell: Tell;
}

/** Up to this length a code is coarse enough for paper at 30 mm: 0.4 mm a module. */
const LONGEST_ON_PAPER = 420;

/** The sheets of all benches, or their keys, for paper alone: drawn a bench at a time, printed as soon as all stand. */
export function PrintedSet(props: Props) {
  const { what, sheet, benches, practice, language, answerPage, onPrinted, speak, tell } = props;
  const [stand, setStand] = useState(0);
  const link = useLink('set', { v: 1, kind: 'sheet', of: sheetForm(sheet) }, answerPage);
  const drawer = useDrawer();
  const ready = stand >= benches && link !== '' && drawer !== null;
  useEffect(() => {
    if (stand >= benches) return;
    // One bench, then the page may answer before the next.
    const wait = setTimeout(() => setStand(stand + 1));
    return () => clearTimeout(wait);
  }, [stand, benches]);
  useEffect(() => {
    if (!ready) return;
    window.addEventListener('afterprint', onPrinted);
    // Once the browser has drawn them.
    const wait = setTimeout(() => window.print(), 50);
    return () => {
      window.removeEventListener('afterprint', onPrinted);
      clearTimeout(wait);
    };
  }, [ready, onPrinted]);
  const code = what === 'sheets' && link.length <= LONGEST_ON_PAPER ? drawer?.codeSvg(link) : undefined;
  const rule = saysOfRule(passRuleOf(sheet.rule), drawsOf(sheet)).map(speak).join(' ');
  return (
    <>
      <p className="printing" role="status">
        {ready ? '' : tell('making.printing', { bench: Math.min(stand + 1, benches), benches })}
      </p>
      <div className="printed-set">
        {Array.from({ length: stand }, (_, i) => i + 1).map((bench) =>
          what === 'sheets' ? (
            <BenchSheet
              key={bench}
              bench={bench}
              sheet={sheet}
              rule={rule}
              code={code}
              practice={practice}
              language={language}
              tell={tell}
            />
          ) : (
            <BenchKey
              key={bench}
              bench={bench}
              sheet={sheet}
              practice={practice}
              language={language}
              tell={tell}
            />
          ),
        )}
      </div>
    </>
  );
}
