import type { HoleRow } from '../../run/catalogue.ts';
import type { CutAtHole } from '../../run/clearPlaces.ts';
import { shortLength } from '../../trade/shortLength.ts';
import type { Speak, Tell } from '../speak.ts';
import { Sources, Worked } from './Worked.tsx';

interface Props {
  readonly found: CutAtHole;
  /** Number of the piece, where a run has several. */
  readonly piece?: number | undefined;
  readonly tell: Tell;
}

/** Under an answer: that the cut is at a hole, and where the nearest clear places are. */
export function HoleLine({ found, holes, piece, tell }: Props & { readonly holes: HoleRow }) {
  const { falls, shorter, longer } = found;
  const one = shorter ?? longer;
  return (
    <p>
      <strong>
        {piece === undefined
          ? tell(`cutSheet.${falls}Hole`)
          : tell(`cutSheet.${falls}HoleOf`, { number: piece })}
      </strong>{' '}
      {shorter !== null && longer !== null
        ? tell('cutSheet.clearAtTwo', { shorter: shortLength(shorter, 64), longer: shortLength(longer, 64) })
        : one === null
          ? tell('cutSheet.clearNone')
          : tell('cutSheet.clearAtOne', { place: shortLength(one, 64) })}{' '}
      {tell('cutSheet.holesStand', {
        width: shortLength(holes.width),
        first: shortLength(holes.first),
        pitch: shortLength(holes.pitch),
      })}
    </p>
  );
}

/** The working behind it. */
export function HoleSum({ found, piece, speak, tell }: Props & { readonly speak: Speak }) {
  return (
    <>
      <h3 className="view-title">
        {piece === undefined ? tell('cutSheet.holes') : tell('cutSheet.holesOf', { number: piece })}
      </h3>
      <Worked steps={found.steps} speak={speak} tell={tell} />
      <Sources sources={found.sources} tell={tell} />
    </>
  );
}
