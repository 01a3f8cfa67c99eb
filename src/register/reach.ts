/**
 * Who knows whom, for many entries. A stretch is a row of entries of one chain, each of which cites the one before it:
 * whoever knows one of them knows all before it there, so the past of any entry is how far along every stretch it
 * reaches. An honest chain is one stretch; the second branch of a fork, and what follows a hole, begin another.
 *
 * A stretch keeps only what its entries learned anew (most cite nothing but the one before them), in the order in which
 * they did. A branch learned what its fork knew; that is not written down again but looked up where it branched off.
 */
export interface Place {
  readonly stretch: number;
  /** From 0, along the stretch. */
  readonly step: number;
}

interface Stretch {
  /** Where it branched off. */
  readonly base: Place | undefined;
  length: number;
  /** The i-th thing learned: at which of its own steps, of which stretch, up to which step there. `at` never falls. */
  readonly at: number[];
  readonly of: number[];
  readonly upTo: number[];
  /** By stretch: what was learned of it, as numbers into the lists above. */
  readonly about: Map<number, number[]>;
}

export class Reach {
  private readonly stretches: Stretch[] = [];

  /**
   * Gives an entry its place. Everything that it cites has its place already.
   * @param follows  the one of them that stands before it in its chain
   */
  add(cited: readonly Place[], follows: Place | undefined): Place {
    const place = this.placeAfter(follows);
    for (const other of cited) if (other !== follows) this.learn(place, other);
    return place;
  }

  /** Whether `earlier` lies in the past of `later`; no place lies in its own. */
  knows(later: Place, earlier: Place): boolean {
    return this.reachOf(later, earlier.stretch) >= earlier.step;
  }

  private placeAfter(follows: Place | undefined): Place {
    const goesOn = follows === undefined ? undefined : this.at(follows);
    if (follows !== undefined && goesOn?.length === follows.step + 1) {
      goesOn.length += 1;
      return { stretch: follows.stretch, step: follows.step + 1 };
    }
    this.stretches.push({ base: follows, length: 1, at: [], of: [], upTo: [], about: new Map() });
    return { stretch: this.stretches.length - 1, step: 0 };
  }

  private at({ stretch }: Place): Stretch {
    return this.stretches[stretch] as Stretch;
  }

  /** How far along a stretch the past of a place reaches, −1 for not at all. */
  private reachOf(place: Place, of: number): number {
    if (place.stretch === of) return place.step - 1;
    for (let from: Place | undefined = place; from !== undefined; ) {
      const stretch = this.at(from);
      const { step } = from;
      const learned = stretch.about.get(of);
      const last = learned?.[lastBy(learned, (i) => (stretch.at[i] as number) <= step)];
      // What was learned later reaches further, and all of it further than what the base knew.
      if (last !== undefined) return stretch.upTo[last] as number;
      from = stretch.base;
      if (from?.stretch === of) return from.step;
    }
    return -1;
  }

  /** Takes a place with all its past into the past of the newest entry of a stretch. */
  private learn(place: Place, other: Place): void {
    const news: { readonly of: Place; readonly known: number }[] = [];
    for (let of: Place | undefined = other; of !== undefined; of = this.at(of).base) {
      const known = this.reachOf(place, of.stretch);
      if (of.step > known) news.push({ of, known });
      // Whoever knows part of a branch knows where it branched off.
      if (known >= 0) break;
    }
    // The trunk before its branches: what a branch learned stands on what its trunk knew.
    for (const { of, known } of news.reverse()) {
      const theirs = this.at(of);
      const from = lastBy(theirs.at, (at) => at <= known) + 1;
      const to = lastBy(theirs.at, (at) => at <= of.step);
      for (let i = from; i <= to; i++) this.note(place, theirs.of[i] as number, theirs.upTo[i] as number);
      this.note(place, of.stretch, of.step);
    }
  }

  private note(place: Place, of: number, upTo: number): void {
    if (upTo <= this.reachOf(place, of)) return;
    const stretch = this.at(place);
    const i = stretch.at.push(place.step) - 1;
    stretch.of.push(of);
    stretch.upTo.push(upTo);
    const about = stretch.about.get(of);
    if (about === undefined) stretch.about.set(of, [i]);
    else about.push(i);
  }
}

/** Index of the last item for which something holds that holds for all items before it; −1 for none. */
function lastBy(items: readonly number[], holds: (item: number) => boolean): number {
  let [low, high] = [-1, items.length - 1];
  // What is asked for most is the end.
  if (high >= 0 && holds(items[high] as number)) return high;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (holds(items[middle] as number)) low = middle;
    else high = middle - 1;
  }
  return low;
}
