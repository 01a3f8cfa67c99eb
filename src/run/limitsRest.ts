import type { Source, Step } from '../trade/answer.ts';
import type { ResolvedRun } from './resolved.ts';
import type { RunTables } from './tables.ts';

/**
 * What the limits and the edition that a run is judged by rest on: each paper of the site that adopted some of them, and
 * that the others are training values.
 */
export function limitsRest(
  { run }: Pick<ResolvedRun, 'run'>,
  { limits, usual }: Pick<RunTables, 'limits' | 'usual'>,
): readonly Step[] {
  const { openGap, ...others } = limits;
  const used = [...Object.values(others), ...Object.values(openGap).filter((limit) => limit !== null)];
  const papers = new Map(
    used.filter(({ rests }) => rests === 'adopted').map(({ source }) => [source.id, source]),
  );
  const edition = run.limits?.edition === undefined ? usual.edition : null;
  return [
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
