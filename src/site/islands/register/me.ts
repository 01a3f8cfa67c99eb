/** Who signs on this device: the key's person as the register knows him, by name, and by the marks he goes by in a box. */
import type { Judged } from '../../../register/judged.ts';
import type { KeyFile } from '../../../register/keyFile.ts';
import { marksOf, type People, spokenName } from '../../people.ts';
import { shortKey } from '../../shortKey.ts';

export interface Me {
  readonly me: string;
  readonly initials: string;
  /** Ids that the register or the names file knows, sorted. */
  readonly known: readonly string[];
}

export function meOn({ view, authority }: Judged, { publicKey }: KeyFile, people: People): Me {
  const [mine] = authority.persons.get(publicKey) ?? [];
  const known = [
    ...new Set([...people.ids, ...view.list.flatMap((entry) => entry.header.about ?? [])]),
  ].sort();
  if (mine === undefined) return { me: shortKey(publicKey), initials: '?', known };
  const initials = marksOf([...known, mine], people.names).get(mine) ?? mine;
  return { me: spokenName(mine, people.names), initials, known };
}
