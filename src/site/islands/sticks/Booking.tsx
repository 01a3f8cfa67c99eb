import type { Ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import type { CutLength } from '../../../trade/sticks/types.ts';
import type { Tell } from '../../speak.ts';
import { leftOvers, type Rack, usedUp } from '../../sticks/rack.ts';
import { Arrow } from '../Arrow.tsx';

interface Props {
  readonly lengths: readonly CutLength[];
  /** Shortest left-over that is kept. */
  readonly least: Ticks;
  readonly example: boolean;
  readonly booked: boolean;
  readonly onBook: () => void;
  /** Left out where the rack was changed since. */
  readonly onUnbook: (() => void) | undefined;
  readonly tell: Tell;
}

/** When a plan is cut: what it left goes on the rack and what it used comes off, in one press that can be taken back. */
export function Booking({ lengths, least, example, booked, onBook, onUnbook, tell }: Props) {
  if (example) return <p className="hint">{tell('sticksSheet.exampleRack')}</p>;
  const on = leftOvers(lengths, least);
  const off = usedUp(lengths);
  const listed = (rack: Rack) =>
    rack
      .map(({ length, count }) => tell('sticksSheet.rackRow', { count, length: shortLength(length) }))
      .join(', ');
  return (
    <div className="booking">
      <p aria-live="polite">
        {booked && `${tell('sticksSheet.booked')} `}
        {!booked && on.length > 0 && `${tell('sticksSheet.goesOn', { what: listed(on) })} `}
        {!booked && on.length === 0 && `${tell('sticksSheet.nothingKept')} `}
        {!booked && off.length > 0 && tell('sticksSheet.comesOff', { what: listed(off) })}
      </p>
      {!booked && (on.length > 0 || off.length > 0) && (
        <button type="button" className="button second" onClick={onBook}>
          {tell(on.length > 0 ? 'sticksSheet.isCut' : 'sticksSheet.isCutOff')} <Arrow />
        </button>
      )}
      {booked && onUnbook !== undefined && (
        <button type="button" className="button second" onClick={onUnbook}>
          {tell('sticksSheet.unbook')} <Arrow />
        </button>
      )}
    </div>
  );
}
