/** What an owner can settle: forks branch by branch, entries lost for good, entries dated before what they follow. Pure. */
import { branchOf, type Fork } from '../../register/forks.ts';
import { isBackDated, type Placed } from '../../register/order.ts';
import { shortKey } from '../shortKey.ts';
import { dayAndTime, entryText, signerName, whatText } from './entries.ts';
import type { Looking, Option } from './looking.ts';

export interface Branch {
  /** Id of its first entry: what a settlement names. */
  readonly first: string;
  readonly title: string;
  /** Its entries in words, the first ones. */
  readonly rows: readonly string[];
  /** How many more there are. */
  readonly more: number;
}

export interface ForkText {
  readonly title: string;
  readonly branches: readonly Branch[];
}

const MOST_ROWS = 6;
const letters = 'ABCDEFGH';

function branchText(fork: Fork, first: Placed, letter: string, looking: Looking): Branch {
  const { judged, tell } = looking;
  const entries = judged.view.list.filter((entry) => branchOf(fork, entry) === first);
  const last = entries.at(-1) ?? first;
  const values = {
    letter,
    count: entries.length,
    entry: shortKey(first.id),
    from: dayAndTime(looking, first.time),
    to: dayAndTime(looking, last.time),
    known: knownTo(fork, first, looking),
  };
  return {
    first: first.id,
    title: tell(entries.length === 1 ? 'drills.branchOne' : 'drills.branch', values),
    rows: entries.slice(0, MOST_ROWS).map((entry) =>
      tell('drills.branchEntry', {
        when: dayAndTime(looking, entry.time),
        entry: shortKey(entry.id),
        what: whatText(entry, looking),
        number: entry.header.seq,
      }),
    ),
    more: Math.max(0, entries.length - MOST_ROWS),
  };
}

/** Whoever went on from a branch had it in hand: that says which one others have seen. */
function knownTo(fork: Fork, first: Placed, looking: Looking): string {
  const { judged, tell } = looking;
  const others = judged.view.list
    .filter((entry) => entry.chain !== fork.chain && judged.view.order.isPast(entry, first))
    .map(({ header: { signer, device } }) =>
      tell('drills.knownBy', { signer: signerName(signer, looking), device }),
    );
  return others.length === 0 ? tell('drills.knownNobody') : [...new Set(others)].join(', ');
}

/** Forks that nobody has settled yet, both branches in words. */
export function forkTexts(looking: Looking): readonly ForkText[] {
  const { judged, tell } = looking;
  return judged.forks
    .filter(({ settled }) => !settled)
    .map(({ fork }) => {
      const device = (fork.branches[0] as Placed).header.device;
      const signer = signerName(fork.signer, looking);
      return {
        title: tell('drills.fork', { signer, device, number: fork.seq }),
        branches: fork.branches.map((first, i) => branchText(fork, first, letters[i] ?? '?', looking)),
      };
    });
}

/** Everything that a settlement can name now. */
export function settleOptions(looking: Looking): readonly Option[] {
  const { judged, tell } = looking;
  const forks = forkTexts(looking).flatMap(({ title, branches }) =>
    branches.map((branch) => ({
      value: branch.first,
      text: tell('drills.settleBranch', { fork: title, branch: branch.title }),
    })),
  );
  const gaps = judged.gaps
    .filter(({ settled }) => !settled)
    .map(({ cited }) => {
      const signer = signerName(cited.signer, looking);
      const values = { signer, device: cited.device, number: cited.seq };
      return { value: cited.id, text: tell('drills.settleGap', values) };
    });
  const early = judged.view.list
    .filter((entry) => isBackDated(entry) && judged.doubt(entry) !== undefined)
    .map((entry) => ({
      value: entry.id,
      text: tell('drills.settleEarly', { entry: entryText(entry, looking) }),
    }));
  const seen = new Set<string>();
  return [...forks, ...gaps, ...early].filter(({ value }) => !seen.has(value) && seen.add(value));
}

/** How many things wait to be settled: a fork is one, whatever its branches. */
export function waitingToSettle(looking: Looking): number {
  const forks = forkTexts(looking);
  const branches = new Set(forks.flatMap((fork) => fork.branches.map(({ first }) => first)));
  return forks.length + settleOptions(looking).filter(({ value }) => !branches.has(value)).length;
}
