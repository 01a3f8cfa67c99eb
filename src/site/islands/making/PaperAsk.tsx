import type { ShownAsk } from '../../../practice/show.ts';
import { type SiteKey, type Tell, unbroken } from '../../speak.ts';

type Ask = Omit<ShownAsk, 'parts'> & Pick<ShownAsk, 'parts'>;
interface Props {
  readonly ask: Ask;
  readonly tell: Tell;
}

/** An ask with room for a pencil, whatever its kind. */
export function PaperAsk({ ask, tell }: Props) {
  const { kind, unit, options = [], items = [], parts = [] } = ask;
  const places = kind === 'place';
  return (
    <li className={parts.length > 0 ? 'paper-job' : undefined}>
      {unbroken(ask.prompt)}
      {unit !== undefined && (
        <>
          {' '}
          <span className="blank-line short" />{' '}
          {unit !== 'in' && unit !== 'count' && tell(`unit.${unit}` as SiteKey)}
        </>
      )}
      {kind === 'order' && <p className="label">{tell('making.paperOrder')}</p>}
      {places && <p className="label">{tell('making.paperPlace')}</p>}
      {kind === 'faults' && <p className="label">{tell('making.paperFaults')}</p>}
      {kind === 'sticks' && <p className="label">{tell('making.paperSticks')}</p>}
      {!places && kind !== 'sticks' && options.length > 0 && (
        <ul className={kind === 'faults' ? 'paper-rules' : boxes(options)}>
          {options.map(({ id, text }, k) => (
            <li key={id}>
              {kind === 'faults' ? <b>{tell('making.paperRule', { number: k + 1 })}</b> : <i />}{' '}
              {unbroken(text)}
            </li>
          ))}
        </ul>
      )}
      {kind === 'order' && (
        <ul className="paper-boxes">
          {items.map(({ id, text }) => (
            <li key={id}>
              <i /> {unbroken(text)}
            </li>
          ))}
        </ul>
      )}
      {places && (
        <Rows heads={[tell('making.paperLeg'), tell('making.paperAt'), whats(ask, tell)]} rows={6} />
      )}
      {kind === 'faults' && (
        <Rows heads={[tell('making.paperLeg'), tell('making.paperAt'), tell('making.paperWhich')]} rows={6} />
      )}
      {kind === 'sticks' && (
        <Rows heads={[tell('making.paperLength'), tell('making.paperPieces')]} rows={5} />
      )}
      {parts.length > 0 && (
        <ol className="paper-asks">
          {parts.map((part) => (
            <PaperAsk key={part.id} ask={part} tell={tell} />
          ))}
        </ol>
      )}
    </li>
  );
}

/** Short ones stand two in a row. */
const boxes = (options: readonly { readonly text: string }[]): string =>
  options.every(({ text }) => text.length < 40) ? 'paper-boxes two' : 'paper-boxes';

/** What is set down: named once where it is one thing, else the column says of which. */
const whats = ({ options = [] }: Ask, tell: Tell): string =>
  tell('making.paperWhat', { what: options.map(({ text }) => text).join(', ') });

function Rows({ heads, rows }: { readonly heads: readonly string[]; readonly rows: number }) {
  return (
    <table className="paper-rows">
      <thead>
        <tr>
          {heads.map((head) => (
            <th scope="col" key={head}>
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {Array.from({ length: rows }, (_, k) => k).map((k) => (
          <tr key={k}>
            {heads.map((head) => (
              <td key={head} />
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
