import { fillCheck } from './fillCheck.ts';
import { fillWithBarrier } from './fillWithBarrier.ts';
import { howManyCables } from './howManyCables.ts';
import { narrowestChannel } from './narrowestChannel.ts';
import { noRow } from './noRow.ts';

/** Cables in the channel: fill, bends, what lies beside what. */
export const filling = {
  'fill-check': fillCheck,
  'narrowest-channel': narrowestChannel,
  'how-many-cables': howManyCables,
  'no-row': noRow,
  'fill-with-barrier': fillWithBarrier,
};
