import type { Shown } from '../../../practice/show.ts';
import { type Tell, unbroken } from '../../speak.ts';

interface Props {
  readonly givens: Shown['givens'];
  readonly heading: 'h2' | 'h3';
  readonly tell: Tell;
}

/** What is known beside the figures of a draw. */
export function Known({ givens, heading: Heading, tell }: Props) {
  return (
    <>
      <Heading className="view-title">{tell('practicePage.known')}</Heading>
      <table className="plain known">
        <tbody>
          {givens.map(({ id, label, text }) => (
            <tr key={id}>
              <th scope="row">{label}</th>
              <td className="given">{unbroken(text)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}
