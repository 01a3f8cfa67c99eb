import type { Shown } from '../../../practice/show.ts';
import { sortLimits } from '../../limits.ts';
import { textParts } from '../../practice.ts';
import { type Tell, unbroken } from '../../speak.ts';
import { Rules } from './DrawText.tsx';

interface Props {
  readonly shown: Shown;
  readonly heading: 'h2' | 'h3';
  readonly tell: Tell;
}

/** What is known beside the figures of a draw, and what has to hold in it. */
export function Known({ shown, heading: Heading, tell }: Props) {
  const { others, tables, limits } = sortLimits(shown.givens);
  const { rules } = textParts(shown.text);
  return (
    <>
      <Heading className="view-title">{tell('practicePage.known')}</Heading>
      <table className="plain known">
        <tbody>
          {others.map(({ id, label, text }) => (
            <tr key={id}>
              <th scope="row">{label}</th>
              <td className="given">{unbroken(text)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {limits.length > 0 && (
        <table className="known-limits">
          <caption>{tell('practicePage.limits', { tables: tables.join('; ') })}</caption>
          <thead>
            <tr>
              <th scope="col">{tell('practicePage.bottom')}</th>
              <th scope="col" className="num">
                {tell('practicePage.width')}
              </th>
              <th scope="col" className="num">
                {tell('practicePage.oneCable')}
              </th>
              <th scope="col" className="num">
                {tell('practicePage.moreCables')}
              </th>
            </tr>
          </thead>
          <tbody>
            {limits.map(({ id, bottom, width, one, several }) => (
              <tr key={id}>
                <th scope="row">{bottom}</th>
                <td className="num">{width}</td>
                <td className="num">{one}</td>
                <td className="num">{several}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {rules.length > 0 && (
        <>
          <Heading className="view-title">{tell('practicePage.rules')}</Heading>
          <Rules rules={rules} />
        </>
      )}
    </>
  );
}
