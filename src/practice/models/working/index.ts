import { atHeight } from './atHeight.ts';
import { classifiedArea } from './classifiedArea.ts';
import { droppedObjects } from './droppedObjects.ts';
import { goAskStop } from './goAskStop.ts';
import { hotWork } from './hotWork.ts';
import { lockOut } from './lockOut.ts';
import { nearLiveParts } from './nearLiveParts.ts';
import { sawAndDrill } from './sawAndDrill.ts';
import { startOfWork } from './startOfWork.ts';

/** Orders of work, safe work, faults put right: what is done, asked, stopped. */
export const working = {
  'start-of-work': startOfWork,
  'saw-and-drill': sawAndDrill,
  'hot-work': hotWork,
  'at-height': atHeight,
  'lock-out': lockOut,
  'dropped-objects': droppedObjects,
  'near-live-parts': nearLiveParts,
  'classified-area': classifiedArea,
  'go-ask-stop': goAskStop,
};
