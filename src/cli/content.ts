/** `trayhand content …`: the check of everything that people write. */
import { readLibrary } from '../schema/library.ts';
import { contentFiles } from './contentFiles.ts';
import { plain } from './envelope.ts';
import { pathHere } from './input.ts';
import { staleProofs } from './proofHashes.ts';
import type { Group } from './verb.ts';

export const group: Group = {
  name: 'content',
  line: 'what trainers write: tasks, procedures, words, practice',
  verbs: [
    {
      name: 'check',
      line: 'reads every content file and says everything that is wrong, proofs that are not current among it',
      options: {
        in: { value: 'DIR', line: 'folder that holds content/; left out: this project' },
      },
      manual: () => [
        'Comes back: files (how many were read), faults [{file, field, value, message, todo}], sorted by file.',
        'Exit 0: no fault. Exit 1: faults (the answer is still ok:true).',
      ],
      run: (call) => {
        const folder = call.text('in');
        const files = contentFiles(folder === undefined ? undefined : pathHere(folder));
        // The proofs are of this project's code and families; a folder that stands elsewhere has none.
        const faults = [...readLibrary(files).faults, ...(folder === undefined ? staleProofs() : [])];
        const told = faults.map(({ file, field, value = null, message, todo }) => ({
          file,
          field,
          value,
          message,
          todo,
        }));
        return { json: plain({ files: files.length, faults: told }), exit: faults.length === 0 ? 0 : 1 };
      },
    },
  ],
};
