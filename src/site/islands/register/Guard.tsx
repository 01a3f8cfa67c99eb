import type { KeptSheet } from '../../device/sheets.ts';
import type { Tell } from '../../speak.ts';

interface Props {
  readonly sheet: KeptSheet;
  /** Address of the page on which it is answered. */
  readonly answerPage: string;
  readonly tell: Tell;
}

/** Stands where something would be signed, while a sheet is being answered on this device. */
export function Guard({ sheet, answerPage, tell }: Props) {
  const { sheet: id, bench, person } = sheet.set;
  return (
    <div className="hold" role="status">
      <h2 className="hold-title">{tell('guard.title')}</h2>
      <p>{tell('guard.line', { sheet: id, bench, person })}</p>
      <p>
        <a className="offer" href={answerPage}>
          {tell('guard.how')}
        </a>
      </p>
    </div>
  );
}
