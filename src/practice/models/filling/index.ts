import { cableBend } from './cableBend.ts';
import { dropOutRadius } from './dropOutRadius.ts';
import { fastenCables } from './fastenCables.ts';
import { fillCheck } from './fillCheck.ts';
import { fillWithBarrier } from './fillWithBarrier.ts';
import { fillWithSpare } from './fillWithSpare.ts';
import { freeLength } from './freeLength.ts';
import { howManyCables } from './howManyCables.ts';
import { layingCables } from './layingCables.ts';
import { narrowestChannel } from './narrowestChannel.ts';
import { noRow } from './noRow.ts';
import { odFromSheet } from './odFromSheet.ts';
import { oneMoreCable } from './oneMoreCable.ts';
import { powerAndSignal } from './powerAndSignal.ts';
import { singleConductors } from './singleConductors.ts';
import { tubeInTray } from './tubeInTray.ts';

/** Cables in the channel: fill, bends, what lies beside what. */
export const filling = {
  'fill-check': fillCheck,
  'narrowest-channel': narrowestChannel,
  'how-many-cables': howManyCables,
  'no-row': noRow,
  'fill-with-barrier': fillWithBarrier,
  'single-conductors': singleConductors,
  'fill-with-spare': fillWithSpare,
  'one-more-cable': oneMoreCable,
  'od-from-sheet': odFromSheet,
  'cable-bend': cableBend,
  'drop-out-radius': dropOutRadius,
  'free-length': freeLength,
  'fasten-cables': fastenCables,
  'power-and-signal': powerAndSignal,
  'tube-in-tray': tubeInTray,
  'laying-cables': layingCables,
};
