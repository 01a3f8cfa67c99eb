import type { Tell } from '../../speak.ts';
import { Arrow } from '../Arrow.tsx';
import type { Search } from './useSearch.ts';

/** How the search stands: for how long, and the button that ends it or looks on. Apart from the answer, which speaks when it changes. */
export function Looking({ search, tell }: { readonly search: Search; readonly tell: Tell }) {
  const { standing, seconds, most, stop, again } = search;
  if (standing === 'waiting' || standing === 'ended' || standing === 'noSolver') return null;
  if (standing === 'lost') return <p className="label">{tell('sticksSheet.lost')}</p>;
  if (standing === 'looking')
    return (
      <div className="looking off-paper">
        <p className="label">
          {tell('sticksSheet.looking')}{' '}
          {tell(seconds === 1 ? 'sticksSheet.seconds-one' : 'sticksSheet.seconds-many', { count: seconds })}
        </p>
        <button type="button" className="button" onClick={stop}>
          {tell('sticksSheet.stop')} <Arrow />
        </button>
      </div>
    );
  return (
    <div className="looking off-paper">
      <p className="label">
        {standing === 'stopped' ? tell('sticksSheet.stopped') : tell('sticksSheet.late', { seconds: most })}
      </p>
      <button type="button" className="button second" onClick={again}>
        {tell('sticksSheet.again')} <Arrow />
      </button>
    </div>
  );
}
