import { useEffect, useState } from 'react';
import type { CrewLinks } from '../../crewLines.ts';

/** Which sheet of the page is asked for by its address: a person's, a task's, or the board. */
export interface Which {
  readonly person: string | undefined;
  readonly task: string | undefined;
  /** Beginning of an entry's id, to be looked at on the person's sheet. */
  readonly entry: string | undefined;
}

const board: Which = { person: undefined, task: undefined, entry: undefined };

/** `#person=p-17&entry=4e19c07b`, `#task=T05`; any other place of the page is on the board. */
export function whichOf(hash: string): Which {
  const asked = new URLSearchParams(hash.replace(/^#/, ''));
  return {
    person: asked.get('person') ?? undefined,
    task: asked.get('task') ?? undefined,
    entry: asked.get('entry') ?? undefined,
  };
}

export const ownLinks: CrewLinks = {
  person: (id) => `#person=${encodeURIComponent(id)}`,
  task: (id) => `#task=${encodeURIComponent(id)}`,
  entry: (person, short) => `#person=${encodeURIComponent(person)}&entry=${short}`,
};

/** Follows the address; the board until the page stands. */
export function useWhich(): Which {
  const [which, setWhich] = useState(board);
  useEffect(() => {
    const read = () => setWhich(whichOf(location.hash));
    read();
    addEventListener('hashchange', read);
    return () => removeEventListener('hashchange', read);
  }, []);
  return which;
}
