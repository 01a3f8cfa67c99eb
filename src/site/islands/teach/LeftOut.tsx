import type { LeftWhy } from '../../../practice/statistics/rawTries.ts';
import type { Left } from '../../../practice/statistics/tries.ts';
import type { SiteKey, Tell } from '../../speak.ts';

const whys: Readonly<Record<LeftWhy, SiteKey>> = {
  'no such sheet': 'answersPage.noSheet',
  'not of this sheet': 'answersPage.notOfSheet',
  'no such family': 'answersPage.noFamily',
  'other generator': 'answersPage.otherGenerator',
  'not drawn': 'answersPage.notDrawn',
  unread: 'answersPage.unread',
  twice: 'answersPage.twice',
};

/** Tries that are not counted, each with its reason: nothing is dropped in silence. */
export function LeftOut({ left, tell }: { readonly left: readonly Left[]; readonly tell: Tell }) {
  if (left.length === 0) return null;
  return (
    <details className="opens">
      <summary>
        {tell('answersPage.left')} <b>{left.length}</b>
      </summary>
      <div>
        <ul className="tally-lines">
          {left.map(({ name, family, seed, why }) => (
            <li key={`${name} ${family} ${seed} ${why}`}>
              {tell('answersPage.leftLine', { name, family, draw: seed, why: tell(whys[why]) })}
            </li>
          ))}
        </ul>
      </div>
    </details>
  );
}
