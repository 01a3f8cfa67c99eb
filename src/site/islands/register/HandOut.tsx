import { LONGEST_LINK, type Mark } from '../../../schema/link.ts';
import type { Tell } from '../../speak.ts';
import { LinkOut } from '../LinkOut.tsx';
import { Code } from './Code.tsx';
import { useLink } from './useLink.ts';

interface Props {
  readonly mark: Mark;
  /** What is handed over, as its file holds it. */
  readonly json: unknown;
  /** Path of the page that takes it. */
  readonly page: string;
  /** What the code is of, and what opening it does. */
  readonly label: string;
  readonly opens: string;
  readonly tell: Tell;
}

/** A thing as a link and as a code of that link: it needs no server on its way, and no file. */
export function HandOut({ mark, json, page, label, opens, tell }: Props) {
  const link = useLink(mark, json, page);
  if (link === '') return null;
  if (link.length > LONGEST_LINK) {
    return <p className="note">{tell('handing.linkLong', { long: link.length, most: LONGEST_LINK })}</p>;
  }
  return (
    <div className="handed">
      <Code text={link} label={label} tell={tell} />
      <div>
        <p>{opens}</p>
        <LinkOut link={link} tell={tell} />
        <p className="note">{tell('handing.codeLine')}</p>
      </div>
    </div>
  );
}
