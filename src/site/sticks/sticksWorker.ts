/** The worker: looks for a plan in one go, and tells every better one. It is stopped by ending it: it hears nothing meanwhile. */
import { sticks } from '../../trade/sticks/sticks.ts';
import type { Asked, Told } from './messages.ts';

const tell = (told: Told): void => postMessage(told);

addEventListener('message', ({ data }: MessageEvent<Asked>) => {
  const end = performance.now() + data.seconds * 1000;
  let late = false;
  const stop = (): boolean => {
    late ||= performance.now() >= end;
    return late;
  };
  const answered = sticks(data.given, { stop, found: (soFar) => tell({ told: 'better', answered: soFar }) });
  tell({ told: 'end', answered, late });
});
