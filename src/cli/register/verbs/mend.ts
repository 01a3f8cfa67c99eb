import { NoRegister } from '../../../register/judged.ts';
import { mergeRegisters } from '../../../register/merge.ts';
import { openRegister } from '../../../register/register.ts';
import { dayIn } from '../../../schema/dayIn.ts';
import { plain } from '../../envelope.ts';
import type { Verb } from '../../verb.ts';
import { onlyFolder, readFolder } from '../folder.ts';
import { mendFolder } from '../folderMend.ts';
import { isBrokenOff, mergeFolder } from '../folderMerge.ts';
import { common, Options } from '../options.ts';
import { tellUnnamed } from '../unnamed.ts';
import { folderOf, inTurn, verify } from '../write.ts';

const { at, map } = common;

export const mendVerb: Verb = {
  name: 'mend',
  line: 'cuts what a broken-off writing left behind, and keeps it beside',
  words: ['DIR'],
  options: { at, map },
  manual: () => [
    'Comes back: mended [{file, line, kept}]: the file, the line that was not whole, and where it is kept now.',
    'Only text after the last whole line is cut. Nothing torn: mended is empty.',
    'Standard error names files below bodies that no entry names: nobody can say whom they are about.',
    'Take those away yourself, unless their entry may still come from another device.',
  ],
  run: async (call) => {
    const options = new Options(call);
    const folder = folderOf(call);
    const now = options.now();
    if (call.text('map') !== undefined) await options.map();
    options.done();
    onlyFolder(folder);
    readFolder(folder);
    const mended = mendFolder(folder);
    await finish(folder, now);
    return { json: plain({ mended }), exit: 0 };
  },
};

/** Ends a merge that was broken off, drops what an erase did not come to, and tells of texts that nothing names. */
async function finish(folder: string, now: number): Promise<void> {
  await inTurn(folder, async () => {
    const files = readFolder(folder);
    try {
      const register = await openRegister(files, { verify, now, dayIn });
      const { held, judged } = register;
      if (isBrokenOff(files) || judged.view.erased.size > 0) {
        const merged = mergeRegisters(held, held, { now, dayIn });
        if (!mergeFolder(folder, files, held, merged, 'left')) return undefined;
      }
      tellUnnamed(register);
    } catch (cause) {
      // Without a beginning nobody can say who was erased.
      if (!(cause instanceof NoRegister)) throw cause;
    }
    return true;
  });
}
