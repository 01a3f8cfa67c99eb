import { NoRegister } from '../../../register/judged.ts';
import { mergeRegisters } from '../../../register/merge.ts';
import { openRegister } from '../../../register/register.ts';
import { dayIn } from '../../../schema/dayIn.ts';
import { plain } from '../../envelope.ts';
import type { Verb } from '../../verb.ts';
import { readFolder } from '../folder.ts';
import { mendFolder } from '../folderMend.ts';
import { isBrokenOff, mergeFolder } from '../folderMerge.ts';
import { common, Options } from '../options.ts';
import { folderOf, verify } from '../write.ts';

const { at, map } = common;

export const mendVerb: Verb = {
  name: 'mend',
  line: 'cuts what a broken-off writing left behind, and keeps it beside',
  words: ['DIR'],
  options: { at, map },
  manual: () => [
    'Comes back: mended [{file, line, kept}]: the file, the line that was not whole, and where it is kept now.',
    'Only text after the last whole line is cut. Nothing torn: mended is empty.',
  ],
  run: async (call) => {
    const options = new Options(call);
    const folder = folderOf(call);
    const now = options.now();
    if (call.text('map') !== undefined) await options.map();
    options.done();
    readFolder(folder);
    const mended = mendFolder(folder);
    await finish(folder, now);
    return { json: plain({ mended }), exit: 0 };
  },
};

/** Ends a merge that was broken off, and drops the bodies that an erase did not come to. */
async function finish(folder: string, now: number): Promise<void> {
  for (let done = false; !done; ) {
    const files = readFolder(folder);
    if (!isBrokenOff(files) && !Object.values(files).some((text) => text.includes('"kind":"erase"'))) return;
    try {
      const { held } = await openRegister(files, { verify, now, dayIn });
      const merged = mergeRegisters(held, held, { now, dayIn });
      done = mergeFolder(folder, files, held, merged, 'left');
    } catch (cause) {
      // Without a beginning nobody can say who was erased.
      if (!(cause instanceof NoRegister)) throw cause;
      return;
    }
  }
}
