/** What a run says of legs by their names: ends, joints, supports, marks, places, cables; and whether the leg is there. */
import type { Bad, Node, Tree } from './tree.ts';
import type { End, Run } from './types.ts';

/** Names that stand for no leg, a leg that ends twice or goes on, a cable's name twice. */
export function namedFaults(run: Run, { byId }: Tree, bad: Bad): void {
  const known = [...byId.keys()].join(' ');
  const { ends = [], joints = [], supports = [], marks = [], places = [], cables = [] } = run;
  for (const [list, all] of Object.entries({ joints, ends, supports, marks, places })) {
    all.forEach(({ leg }, i) => {
      if (!byId.has(leg)) bad(`${list}[${i}].leg`, leg, 'the run has no such leg', `name one of ${known}`);
    });
  }
  const ended = new Set<string>();
  ends.forEach(({ leg }, i) => {
    const field = `ends[${i}].leg`;
    const going = byId.get(leg)?.children[0];
    if (ended.has(leg)) bad(field, leg, 'this leg has an end already', 'give one end a leg');
    else if (going !== undefined) {
      bad(field, leg, `leg ${going.given.id} goes on from here`, 'give ends only to the last legs');
    }
    ended.add(leg);
  });
  const carried = new Set<string>();
  cables.forEach(({ id, to, type, use }, i) => {
    if (type === 'tube' && use !== 'air')
      bad(`cables[${i}].use`, use, 'a tube carries air', 'write air, or name the type of the cable');
    if (!byId.has(to)) bad(`cables[${i}].to`, to, 'the run has no such leg', `name one of ${known}`);
    if (carried.has(id))
      bad(`cables[${i}].id`, id, 'another cable has this id already', 'give each cable an id of its own');
    carried.add(id);
  });
}

/** Entries by the leg that they name, each with its path in the run; in the order given. */
export function byLeg<T extends { readonly leg: string }>(
  list: string,
  all: readonly T[] | undefined,
): ReadonlyMap<string, readonly { readonly given: T; readonly field: string }[]> {
  const found = new Map<string, { given: T; field: string }[]>();
  (all ?? []).forEach((given, i) => {
    const one = { given, field: `${list}[${i}]` };
    const own = found.get(given.leg);
    if (own === undefined) found.set(given.leg, [one]);
    else own.push(one);
  });
  return found;
}

/** The end of each leg that has an entry; the first, where there are more. */
export function endsOf(run: Run): ReadonlyMap<string, { readonly given: End; readonly field: string }> {
  const ends = new Map<string, { given: End; field: string }>();
  (run.ends ?? []).forEach((given, i) => {
    if (!ends.has(given.leg)) ends.set(given.leg, { given, field: `ends[${i}]` });
  });
  return ends;
}

/** A cable over a leg with a barrier lies on one of its sides; air is no cable. */
export function sideFaults(run: Run, { byId }: Tree, bad: Bad): void {
  (run.cables ?? []).forEach(({ side, use, to }, i) => {
    if (side !== undefined || use === 'air') return;
    for (let node: Node | null = byId.get(to) ?? null; node !== null; node = node.parent) {
      if (node.given.barrier !== true) continue;
      bad(
        `cables[${i}].side`,
        undefined,
        `leg ${node.given.id} has a barrier, and this cable runs over it`,
        'write on which side it lies, left or right along the travel',
      );
      return;
    }
  });
}
