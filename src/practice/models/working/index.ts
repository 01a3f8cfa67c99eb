import { atHeight } from './atHeight.ts';
import { bendsAndEnds } from './bendsAndEnds.ts';
import { boltsAndMarks } from './boltsAndMarks.ts';
import { classifiedArea } from './classifiedArea.ts';
import { droppedObjects } from './droppedObjects.ts';
import { goAskStop } from './goAskStop.ts';
import { hitAndMiss } from './hitAndMiss.ts';
import { holesAndHeads } from './holesAndHeads.ts';
import { hotWork } from './hotWork.ts';
import { lockOut } from './lockOut.ts';
import { nearLiveParts } from './nearLiveParts.ts';
import { revisionAndKit } from './revisionAndKit.ts';
import { sawAndDrill } from './sawAndDrill.ts';
import { spliceFasteners } from './spliceFasteners.ts';
import { splicePlace } from './splicePlace.ts';
import { startOfWork } from './startOfWork.ts';
import { stepAndGap } from './stepAndGap.ts';
import { steps } from './steps.ts';
import { strutAndRod } from './strutAndRod.ts';
import { supportBeforeOpening } from './supportBeforeOpening.ts';
import { tapeSag } from './tapeSag.ts';
import { toolsForThePlace } from './toolsForThePlace.ts';
import { whoCloses } from './whoCloses.ts';

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
  'bends-and-ends': bendsAndEnds,
  'bolts-and-marks': boltsAndMarks,
  'hit-and-miss': hitAndMiss,
  'holes-and-heads': holesAndHeads,
  'revision-and-kit': revisionAndKit,
  'splice-fasteners': spliceFasteners,
  'splice-place': splicePlace,
  'step-and-gap': stepAndGap,
  steps,
  'strut-and-rod': strutAndRod,
  'support-before-opening': supportBeforeOpening,
  'tape-sag': tapeSag,
  'tools-for-the-place': toolsForThePlace,
  'who-closes': whoCloses,
};
