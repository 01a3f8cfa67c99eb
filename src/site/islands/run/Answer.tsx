import type { RunFile } from '../../../run/edit/file.ts';
import { ticks } from '../../../trade/length.ts';
import { isLaidOut, notJudged, parted } from '../../run/judged.ts';
import { longAs } from '../../run/lengths.ts';
import { counted } from '../../run/words.ts';
import type { WorkedRun } from '../../run/workOut.ts';
import type { Settings } from '../../settings.ts';
import type { Tell } from '../../speak.ts';

interface Props {
  readonly file: RunFile;
  readonly worked: WorkedRun;
  readonly settings: Settings;
  readonly tell: Tell;
}

/** One line: what it takes, and what is wrong with it. */
export function Answer({ file, worked, settings, tell }: Props) {
  const { resolved, takeoff, inspected } = worked;
  const tags = Object.values(file.tags.ends).filter((tag) => tag !== '');
  const whole = file.run.legs.reduce((sum, { length }) => sum + length, 0);
  const label = [
    [file.number, file.name].filter((text) => text !== '').join(' · '),
    file.tags.start !== '' && tags.length > 0
      ? tell('yourRun.fromTo', { from: file.tags.start, to: tags.join(', ') })
      : '',
    whole > 0 ? longAs(settings, tell)(ticks(whole)) : '',
  ].filter((text) => text !== '');
  const unjudged = resolved === null || inspected === null ? [] : notJudged(resolved, inspected);
  const names = [...new Set(unjudged.map(({ name }) => tell(name)))];
  const lines = () => {
    if (file.run.legs.length === 0) return [tell('yourRun.nothing')];
    if (resolved === null || inspected === null) return [tell('yourRun.look')];
    const pieces = resolved.legs.reduce((sum, leg) => sum + leg.pieces.length, 0);
    const used = takeoff?.result.sticks.reduce((sum, { lengthsUsed }) => sum + (lengthsUsed ?? 0), 0);
    const wrong = parted(file.run, inspected.result.findings).wrong.length;
    const laid = isLaidOut(file.run);
    const none = unjudged.length > 0 ? 'yourRun.wrong-noneJudged' : 'yourRun.wrong-none';
    return [
      used === undefined
        ? tell(`yourRun.only-${counted(pieces)}`, { pieces })
        : tell(`yourRun.pieces-${counted(pieces)}`, { pieces }),
      ...(used === undefined ? [] : [tell(`yourRun.sticks-${counted(used)}`, { sticks: used })]),
      ...(laid ? [] : [tell('yourRun.notLaid')]),
      ...(wrong > 0 ? [tell(`yourRun.wrong-${counted(wrong)}`, { count: wrong })] : laid ? [tell(none)] : []),
    ];
  };
  return (
    <section className="answer" aria-live="polite" id="run-answer">
      {label.length > 0 && <p className="label">{label.join(', ')}</p>}
      <p className="huge">
        {lines().map((line) => (
          <span key={line}>
            <span className="together">{line}</span>{' '}
          </span>
        ))}
      </p>
      {names.length > 0 && <p>{tell('yourRun.notJudgedList', { list: names.join('; ') })}</p>}
    </section>
  );
}
