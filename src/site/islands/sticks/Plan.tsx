import { useMemo } from 'react';
import { pagePalette } from '../../../drawing/palette.ts';
import { barName } from '../../../drawing/sticks/names.ts';
import { drawSticks } from '../../../drawing/sticks/sticks.ts';
import type { Answered } from '../../../trade/answer.ts';
import { REUSABLE } from '../../../trade/habits.ts';
import type { SticksGiven, SticksResult } from '../../../trade/sticks/types.ts';
import type { Settings } from '../../settings.ts';
import type { Speak, Tell } from '../../speak.ts';
import { cutList, type ListedBars } from '../../sticks/cutList.ts';
import { rowsOf } from '../../sticks/said.ts';
import { Figure } from '../Figure.tsx';
import { ResultRows } from '../SumAnswer.tsx';
import { Sources, Worked } from '../Worked.tsx';

interface Props {
  readonly plan: Answered<SticksResult>;
  readonly given: SticksGiven;
  readonly settings: Settings;
  readonly speak: Speak;
  readonly tell: Tell;
}

/** A plan: its bars, what it comes to, the cut list with a box for each cut, the working. */
export function Plan({ plan, given, settings, speak, tell }: Props) {
  const { result, steps, sources } = plan;
  const least = given.minReusable ?? REUSABLE.length;
  const drawings = useMemo(
    () =>
      (['phone', 'desk'] as const).map((form) =>
        drawSticks({ lengths: result.lengths, kerf: given.kerf }, { form, palette: pagePalette, speak }),
      ),
    [result, given.kerf, speak],
  );
  const list = useMemo(() => cutList(result.lengths, least), [result, least]);
  return (
    <>
      <Figure drawings={drawings} caption={tell('sticksSheet.caption')} />
      <h2 className="view-title">
        {tell('sticksSheet.list')} <span className="label">{tell('sticksSheet.listNote')}</span>
      </h2>
      <table className="cut-list">
        <thead>
          <tr>
            <th scope="col">{tell('sticksSheet.cutTo')}</th>
            <th scope="col">{tell('sticksSheet.mark')}</th>
            <th scope="col" className="num">
              {tell('sticksSheet.times')}
            </th>
            <th scope="col" className="at-desk at-paper boxes">
              {tell('sticksSheet.initials')}
            </th>
          </tr>
        </thead>
        {list.map((bars) => (
          <BarCuts
            key={`${bars.alike.bar.offcut} ${bars.alike.from}`}
            bars={bars}
            speak={speak}
            tell={tell}
          />
        ))}
      </table>
      <ResultRows
        rows={rowsOf(result)}
        settings={settings}
        text={({ key, values }) => tell(key, values as Record<string, string | number>)}
        tell={tell}
      />
      <h2 className="view-title">{tell('sums.sum')}</h2>
      <Worked steps={steps} speak={speak} tell={tell} />
      {sources.length > 0 && (
        <>
          <h2 className="view-title">{tell('sums.sources')}</h2>
          <Sources sources={sources} tell={tell} />
        </>
      )}
    </>
  );
}

function BarCuts({ bars, speak, tell }: { bars: ListedBars; speak: Speak; tell: Tell }) {
  const { alike, length, left, keeps, cuts } = bars;
  const what = tell(keeps ? 'sticksSheet.keep' : 'sticksSheet.scrap');
  return (
    <tbody>
      <tr className="bar-row">
        <th scope="rowgroup" colSpan={4}>
          {tell('sticksSheet.bar', { name: barName(alike, speak), length })}{' '}
          <span className="label">
            {left === ''
              ? tell('sticksSheet.leftNone')
              : tell(alike.from === alike.to ? 'sticksSheet.left' : 'sticksSheet.leftEach', { left, what })}
          </span>
        </th>
      </tr>
      {cuts.map(({ length: cut, mark, times, boxes, cuts: all }, k) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the cuts of a stick have no identity but their order
        <tr key={k}>
          <th scope="row" className="cut">
            {cut}
          </th>
          <td>{mark}</td>
          <td className="num">{times}</td>
          <td className="at-desk at-paper boxes">
            {Array.from({ length: boxes }, (_, n) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: empty boxes
              <i className="initial-box" key={n} />
            ))}
            {boxes < all && tell('sticksSheet.allBoxes', { count: all })}
          </td>
        </tr>
      ))}
    </tbody>
  );
}
