/** Figures that a run takes where it gives none of its own. */
import { KERF, MOVEMENT, SOCKET } from '../trade/habits.ts';
import type { Ticks } from '../trade/length.ts';
import type { RunTables } from './tables.ts';

export interface RunUsual {
  /** What the saw takes. */
  readonly kerf: Ticks;
  /** How far channel goes into the socket of a ladder tray, tray or instrument. */
  readonly socket: Ticks;
  /** What an expansion splice takes up. */
  readonly movement: Ticks;
}

/** The trade's own: for what no site's paper may change, as the draws of practice. Everything else takes `usualOf`. */
export const TRADE_USUAL: RunUsual = {
  kerf: KERF.length,
  socket: SOCKET.length,
  movement: MOVEMENT.length,
};

/** Those of the site, where it has adopted its own. */
export function usualOf({ usual, limits }: Pick<RunTables, 'usual' | 'limits'>): RunUsual {
  return { kerf: usual.kerf.value, socket: usual.socket.value, movement: limits.movement.value };
}
