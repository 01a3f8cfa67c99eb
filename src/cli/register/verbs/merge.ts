import type { Held } from '../../../register/held.ts';
import { type Asked, NoRegister } from '../../../register/judged.ts';
import { type Merged, mergeRegisters } from '../../../register/merge.ts';
import { dayIn } from '../../../schema/dayIn.ts';
import { type Fault, GivenError } from '../../../trade/given.ts';
import { plain } from '../../envelope.ts';
import type { Verb } from '../../verb.ts';
import { mergeFolder } from '../folderMerge.ts';
import { common, Options } from '../options.ts';
import { type OtherCopy, readCopies, refused, tellNotTaken } from '../otherCopies.ts';
import { folderOf, inTurn, open, verify } from '../write.ts';

const { at, map } = common;

export const mergeVerb: Verb = {
  name: 'merge',
  line: 'takes in what other copies of the register hold',
  words: ['DIR', 'OTHER…'],
  options: { at, map },
  manual: () => [
    'OTHER: the folder of a copy, or a register in one file; several may be named.',
    'Comes back: added (entries that DIR did not hold), entries (how many it holds now),',
    'dropped (bodies of people who were erased, left out).',
    'Lines of OTHER that are altered or cannot be read are not taken; standard error names them.',
  ],
  run: async (call) => {
    const options = new Options(call);
    const folder = folderOf(call);
    const names = call.words.slice(1);
    const now = options.now();
    if (call.text('map') !== undefined) await options.map();
    if (names.length === 0) {
      const todo = 'name the folder of a copy, or a register in one file';
      options.faults.push({ field: 'OTHER', message: 'is missing', todo });
    }
    options.done();
    const asked = { now, dayIn };
    return inTurn(folder, async () => {
      const { files, held } = await open(folder, now);
      const copies = await readCopies(names, verify);
      const { merged, added } = joined(held, copies, asked);
      if (!mergeFolder(folder, files, held, merged)) return undefined;
      for (const copy of copies) tellNotTaken(copy);
      const { entries, dropped } = merged;
      return { json: plain({ added, entries, dropped }), exit: 0 };
    });
  },
};

/** One after the other, all of them or none. @throws {GivenError} one that began differently, or has no beginning */
function joined(first: Held, copies: readonly OtherCopy[], asked: Asked): { merged: Merged; added: number } {
  const faults: Fault[] = [];
  let held = first;
  let merged: Merged | undefined;
  let added = 0;
  for (const copy of copies) {
    try {
      merged = mergeRegisters(held, copy.held, asked);
      added += merged.added;
      held = together(held, copy.held);
    } catch (cause) {
      faults.push(...faultsOf(copy.name, cause));
    }
  }
  if (faults.length > 0 || merged === undefined) throw new GivenError(faults);
  return { merged, added };
}

/** What either holds. Of an entry signed twice over both keep the smaller signature, as a reader does. */
function together(a: Held, b: Held): Held {
  const entries = new Map(a.entries);
  for (const [id, entry] of b.entries) {
    const known = entries.get(id);
    if (known === undefined || entry.signature < known.signature) entries.set(id, entry);
  }
  return { ...a, entries, bodies: new Map([...a.bodies, ...b.bodies]) };
}

function faultsOf(name: string, cause: unknown): readonly Fault[] {
  const todo = 'name a copy of the register in DIR';
  if (cause instanceof NoRegister) return refused(name, 'its beginning cannot be read', todo).faults;
  if (!(cause instanceof GivenError)) throw cause;
  return cause.faults.map(({ message }) => ({ field: 'OTHER', value: name, message, todo }));
}
