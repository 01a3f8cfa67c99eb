import type { CardRows } from '../../run/card/rows.ts';
import type { Tell } from '../../speak.ts';
import { CardSheet, type SheetProps } from './CardSheet.tsx';
import { CutTable, JumperLine, NeedsTable, SpliceTable, SupportTable } from './CardTables.tsx';

interface Props {
  readonly lists: readonly CardRows[];
  readonly needs: readonly string[];
  readonly sheet: SheetProps;
  readonly tell: Tell;
}

/** The sheets behind a job card: what found no room on it. */
export function CardLists({ lists, needs, sheet, tell }: Props) {
  return lists.map(({ findings, cuts, splices, supports, jumpers, crew }, k) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: sheets have no identity but their place
    <CardSheet key={k} {...sheet} number={k + 2}>
      <p className="card-warn">{tell('sheet.notForConstruction')}</p>
      {findings.length > 0 && (
        <>
          <h3>{tell('yourRun.listTitle')}</h3>
          <ol className="card-wrong">
            {findings.map(({ number, text }) => (
              <li key={number}>{tell('yourRun.numbered', { number, text })}</li>
            ))}
          </ol>
        </>
      )}
      {cuts.length > 0 && <CutTable cuts={cuts} tell={tell} />}
      {splices.length > 0 && <SpliceTable splices={splices} tell={tell} />}
      {supports.length > 0 && <h3>{tell('yourRun.supports')}</h3>}
      <SupportTable supports={supports} tell={tell} />
      <JumperLine jumpers={jumpers} tell={tell} />
      {crew.length > 0 && (
        <>
          <h3>{tell('yourRun.needs')}</h3>
          <NeedsTable needs={needs} crew={crew} tell={tell} />
        </>
      )}
    </CardSheet>
  ));
}
