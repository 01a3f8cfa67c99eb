import type { Source, Step } from '../trade/answer.ts';
import { isAdopted } from './catalogue.ts';
import type { ResolvedRun } from './resolved.ts';
import { spanLimit } from './spanLimit.ts';
import type { RunTables } from './tables.ts';

/**
 * What the limits and the edition that a run is judged by rest on: load tables that the site has not adopted, each paper
 * of the site that adopted some of the limits, and that the others are training values.
 */
export function limitsRest(
  resolved: Pick<ResolvedRun, 'run' | 'legs' | 'cablesOver'>,
  { limits, usual }: Pick<RunTables, 'limits' | 'usual'>,
): readonly Step[] {
  const { run, legs } = resolved;
  const { openGap, ...others } = limits;
  const used = [...Object.values(others), ...Object.values(openGap).filter((limit) => limit !== null)];
  const papers = new Map(
    used.filter(({ rests }) => rests === 'adopted').map(({ source }) => [source.id, source]),
  );
  const edition = run.limits?.edition === undefined ? usual.edition : null;
  const loaded = legs.filter((leg) => spanLimit(leg, resolved).by !== 'run').map(({ tray }) => tray);
  const trays = new Set(loaded.filter((tray) => !isAdopted(tray, 'loadTable')).map(({ id }) => id));
  return [
    ...[...trays].map((tray) => ({ say: 'inspect.table-training', values: { tray } })),
    ...[...papers.values()].map((paper) => ({ say: 'inspect.limits-adopted', values: signed(paper) })),
    ...(used.some(({ rests }) => rests === 'training')
      ? [{ say: papers.size === 0 ? 'inspect.limits-training' : 'inspect.limits-others' }]
      : []),
    ...(edition === null
      ? []
      : [{ say: 'rests.edition', values: { edition: edition.value, ...signed(edition.source) } }]),
  ];
}

/** A paper of the site, as a sentence names it. */
const signed = ({ document, edition, where }: Source) => ({ document, on: edition, by: where });
