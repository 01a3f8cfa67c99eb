import type { Tell } from '../speak.ts';
import type { Later } from './useLater.ts';

interface Props {
  readonly later: Pick<Later<unknown>, 'failed' | 'again'>;
  /** What is said while it is on its way; nothing when left out. */
  readonly text?: string;
  readonly tell: Tell;
}

/** In place of a part that is on its way: that it is, or that it could not be fetched and a button to try again. */
export function Fetching({ later, text, tell }: Props) {
  return (
    <div role="status">
      {later.failed ? (
        <>
          <p className="message">
            <strong>{tell('asks.notFetched')}</strong>
          </p>
          <p>
            <button type="button" className="as-link offer" onClick={later.again}>
              {tell('asks.fetchAgain')}
            </button>
          </p>
        </>
      ) : (
        text !== undefined && <p>{text}</p>
      )}
    </div>
  );
}
