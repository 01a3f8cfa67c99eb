/** From a run as given to all that follows from it without judging it, or every fault of it. */
import { type Fault, GivenError } from '../trade/given.ts';
import { formatLength, inches, type Ticks } from '../trade/length.ts';
import { assemble } from './assemble.ts';
import type { Catalogue, Tray } from './catalogue.ts';
import { channelsOf } from './channels.ts';
import { framesOf } from './frames.ts';
import { legWorker } from './legs.ts';
import { namedFaults, sideFaults } from './named.ts';
import type { ResolvedRun } from './resolved.ts';
import { type Bad, collector, treeOf } from './tree.ts';
import type { Run } from './types.ts';
import type { RunUsual } from './usual.ts';
import { wantedGap } from './wantedGap.ts';

/**
 * Legs in space, fittings, joints, pieces, supports, lines and sections of a run.
 *
 * @param usual  what is taken where the run gives none: the site's, where it has adopted its own
 * @throws {GivenError} every fault of the run, each at its field
 */
export function resolveRun(run: Run, catalogue: Catalogue, usual: RunUsual): ResolvedRun {
  const faults: Fault[] = [];
  const bad = collector(faults);
  const tray = trayOf(run, catalogue, bad);
  const wanted = wantedOf(run, usual, bad);
  const tree = treeOf(run.legs, catalogue, bad);
  namedFaults(run, tree, bad);
  sideFaults(run, tree, bad);
  const trays = channelsOf(tree.order, tray, catalogue, bad);
  const placed = framesOf(tree.order, bad);
  const work = legWorker(run, { trays, placed, catalogue, wanted, socket: usual.socket }, bad);
  const worked = tree.order.map(work);
  if (faults.length > 0 || tray === null) throw new GivenError(faults);
  return assemble(run, worked, { tray, stock: run.stock ?? tray.length, kerf: run.kerf ?? usual.kerf });
}

function trayOf(run: Run, catalogue: Catalogue, bad: Bad): Tray | null {
  const tray = catalogue.get(run.tray);
  if (tray?.kind === 'tray') return tray;
  const known = [...catalogue.values()].flatMap((i) => (i.kind === 'tray' ? [i.id] : []));
  bad('tray', run.tray, 'the catalogue has no such tray', `name one of ${known.join(' ')}`);
  return null;
}

/** The gap of an expansion splice now; null where no temperatures tell it. */
function wantedOf({ temps }: Run, { movement }: RunUsual, bad: Bad): Ticks | null {
  if (temps === undefined) return null;
  if (temps.highF < temps.lowF) {
    bad(
      'temps.highF',
      temps.highF,
      'the highest temperature is below the lowest',
      'write the colder one in lowF',
    );
    // Some gap, so that no joint is blamed for it as well.
    return movement;
  }
  return wantedGap(temps, movement);
}

/**
 * Pieces longer than the stock they are cut from, as faults.
 * Kept apart from resolving: a run may be drawn that cannot be cut.
 */
export function stockFaults({ legs, stock }: ResolvedRun): readonly Fault[] {
  return legs.flatMap(({ length, pieces, field }) =>
    pieces
      .filter(({ cut }) => cut > stock)
      .map(({ id, cut }) => ({
        field: `${field}.length`,
        value: inches(length),
        message: `piece ${id} would be ${formatLength(cut)}, longer than a length of ${formatLength(stock)}`,
        todo: 'put another splice into the leg',
      })),
  );
}
