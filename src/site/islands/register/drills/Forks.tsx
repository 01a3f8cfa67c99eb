import { forkTexts, settleOptions } from '../../../drills/branches.ts';
import type { Looking } from '../../../drills/looking.ts';

/** Every open fork with its branches in words, side by side where there is room. */
export function Forks({ looking }: { readonly looking: Looking }) {
  const { tell } = looking;
  const forks = forkTexts(looking);
  if (forks.length === 0) {
    return settleOptions(looking).length === 0 ? <p>{tell('drills.forksNone')}</p> : null;
  }
  return forks.map(({ title, branches }) => (
    <section key={title} className="fork">
      <h3>{title}</h3>
      <div className="columns even">
        {branches.map(({ first, title: branch, rows, more }) => (
          <div key={first}>
            <h4>{branch}</h4>
            <ul>
              {rows.map((row) => (
                <li key={row}>{row}</li>
              ))}
              {more > 0 && <li>{tell('drills.branchMore', { count: more })}</li>}
            </ul>
          </div>
        ))}
      </div>
    </section>
  ));
}
