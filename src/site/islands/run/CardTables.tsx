import type { CardRows } from '../../run/card/rows.ts';
import type { Tell } from '../../speak.ts';

interface CutProps {
  readonly cuts: CardRows['cuts'];
  readonly tell: Tell;
}

export function CutTable({ cuts, tell }: CutProps) {
  return (
    <>
      <h3>{tell('yourRun.cut')}</h3>
      <table>
        <thead>
          <tr>
            <th>{tell('yourRun.piece')}</th>
            <th className="num">{tell('yourRun.cutTo')}</th>
            <th>{tell('yourRun.cutBy')}</th>
          </tr>
        </thead>
        <tbody>
          {cuts.map(({ pieces, text }) => (
            <tr key={pieces.join()}>
              <th>{pieces.join(', ')}</th>
              <td className="num">{text}</td>
              <td>
                <i className="initial" />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}

interface SpliceProps {
  readonly splices: CardRows['splices'];
  readonly tell: Tell;
}

export function SpliceTable({ splices, tell }: SpliceProps) {
  return (
    <>
      <h3>{tell('yourRun.splice')}</h3>
      <table>
        <thead>
          <tr>
            <th>{tell('yourRun.mark')}</th>
            <th className="num">{tell('yourRun.centre')}</th>
            <th className="num">{tell('yourRun.opening')}</th>
            <th />
          </tr>
        </thead>
        <tbody>
          {splices.map(({ name, at, opening }) => (
            <tr key={name}>
              <th>{name}</th>
              <td className="num">{at}</td>
              <td className="num">{opening}</td>
              <td>
                <i className="initial" />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}

/** A row a leg and way: each support by its letter and place. */
export function SupportTable({ supports, tell }: Pick<CardRows, 'supports'> & { readonly tell: Tell }) {
  if (supports.length === 0) return null;
  return (
    <div className="card-supports">
      <p>
        <b>{tell('yourRun.hooked')}</b>
      </p>
      {supports.map(({ title, leg, way, supports: own }) => (
        <p key={`${leg} ${way}`}>
          <b>{title}</b>
          <span className="flow">
            {own.map(({ name, text }) => (
              <span key={name}>
                <b>{name}</b> {text}
              </span>
            ))}
          </span>
        </p>
      ))}
    </div>
  );
}

export function JumperLine({ jumpers, tell }: Pick<CardRows, 'jumpers'> & { readonly tell: Tell }) {
  if (jumpers.length === 0) return null;
  return (
    <p className="card-jumpers">
      <b>{tell('yourRun.jumperList')}</b>
      {jumpers.map(({ title, text }) => (
        <span key={text}>
          {title !== '' && <b>{title}</b>} {text}
        </span>
      ))}
    </p>
  );
}

interface NeedsProps {
  readonly needs: readonly string[];
  readonly crew: readonly string[];
  readonly tell: Tell;
}

/** A box to initial for each task and person of the crew. */
export function NeedsTable({ needs, crew, tell }: NeedsProps) {
  return (
    <table className="card-needs">
      <thead>
        <tr>
          <th>{tell('yourRun.crew')}</th>
          {needs.map((task) => (
            <th key={task}>{task}</th>
          ))}
        </tr>
      </thead>
      <tbody>
        {crew.map((person, k) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: an empty row has no other name
          <tr key={`${person} ${k}`}>
            <th>{person}</th>
            {needs.map((task) => (
              <td key={task}>
                <i className="initial" />
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
