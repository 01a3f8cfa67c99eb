import type { RowShown } from '../cables.ts';
import type { Tell } from '../speak.ts';

interface Props {
  readonly shown: readonly RowShown[];
  readonly table: string;
  /** The floor in words. */
  readonly bottom: string;
  readonly tell: Tell;
}

/** A limit as the table prints it, to a tenth at least. */
const tenths = (area: number): string => (Number.isInteger(area) ? area.toFixed(1) : String(area));

/** The table that is used, the row of the channel behind a bar, the number that speaks ringed. */
export function FillRows({ shown, table, bottom, tell }: Props) {
  if (shown.length === 0) return null;
  return (
    <table className="limits">
      <caption>{tell('fillSheet.rows', { table, bottom })}</caption>
      <thead>
        <tr>
          <th scope="col">{tell('fillSheet.width')}</th>
          {([1, 2] as const).map((column) => (
            <th scope="col" className="num" key={column}>
              {tell(`fillSheet.column${column}`)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {shown.map(({ widthIn, limits, speaks }) => (
          <tr key={widthIn} className={speaks === null ? undefined : 'in-use'}>
            <th scope="row">
              {tell('fillSheet.widthIn', { width: widthIn })}
              {speaks !== null && <span className="spoken">{tell('fillSheet.inUse')}</span>}
            </th>
            {([1, 2] as const).map((column) => {
              const text = limits === null ? tell('fillSheet.askRow') : tenths(limits[column - 1] ?? 0);
              return (
                <td className="num" key={column}>
                  {speaks === column ? <span className="ring">{text}</span> : text}
                </td>
              );
            })}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
