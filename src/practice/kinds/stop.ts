/** Go on, ask first, or stop the job: the same three everywhere. */
import type { StopAsk } from '../family.ts';
import { oneOf, optionFaults, readOption } from './choice.ts';
import type { Kind } from './kind.ts';

const IDS = ['go', 'ask', 'stop'] as const;
const SAYS = { go: 'stopGo', ask: 'stopAsk', stop: 'stopStop' } as const;

export const stop: Kind<StopAsk, string> = {
  ...oneOf,
  read: (_, value) => readOption(IDS, value),
  faults: (_, answer) => optionFaults(IDS, answer),
  show: (_, { say }) => ({ options: IDS.map((id) => ({ id, text: say(SAYS[id]) })) }),
};
