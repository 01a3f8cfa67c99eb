/**
 * Tables and limits that a run is judged by. They come from content/rules and content/site. Figures that no rule states
 * (`Usual`) are the trade's own of trade/habits.ts until content/site adopts others.
 */
import type { Edition, PerEdition } from '../trade/editions.ts';
import type { FillTables } from '../trade/fillTables.ts';
import type { JumperTable } from '../trade/jumper.ts';
import type { Ticks } from '../trade/length.ts';
import type { Limit } from '../trade/limit.ts';
import type { RadiusTable } from '../trade/radius.ts';

export type { Limit } from '../trade/limit.ts';

export interface InstallLimits {
  /** Farthest a support may stand from a face that needs one: 24 in. */
  readonly supportWithin: Limit<Ticks>;
  /** Farthest a splice may stand from its nearest support, as a share of the span: 1/4. */
  readonly spliceShare: Limit<number>;
  /** How far an insertion may differ from the catalogue's: 1/16 in. */
  readonly insertionOff: Limit<Ticks>;
  /** Widest opening of a butt joint: 1/8 in. */
  readonly buttGap: Limit<Ticks>;
  /** How far an expansion gap may differ from the wanted one: 1/16 in. */
  readonly expansionOff: Limit<Ticks>;
  /** Movement that an expansion splice takes up: 1 in. */
  readonly movement: Limit<Ticks>;
  /** Longest open gap to equipment or another tray, by edition; null: not judged. */
  readonly openGap: PerEdition<Limit<Ticks> | null>;
}

/** Figures that are taken where none is given. */
export interface Usual {
  readonly insertion: Limit<Ticks>;
  readonly socket: Limit<Ticks>;
  readonly kerf: Limit<Ticks>;
  /** Adopted by the site, or null: the newest is then taken. */
  readonly edition: Limit<Edition> | null;
}

export interface RunTables {
  readonly fill: FillTables;
  readonly jumper: JumperTable;
  readonly radius: RadiusTable;
  readonly limits: InstallLimits;
  /** Taken where the run names no edition: the one the site has adopted, else the newest. */
  readonly edition: Edition;
  readonly usual: Usual;
}
