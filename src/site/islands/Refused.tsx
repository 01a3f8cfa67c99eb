import type { Fault } from '../../trade/given.ts';
import type { Tell } from '../speak.ts';

interface Props {
  readonly faults: readonly Fault[];
  /** Fields whose faults stand here; all when left out. */
  readonly fields?: readonly string[];
  readonly id?: string;
  readonly tell: Tell;
}

/** What the core refused, in its own words, beside the field it belongs to. */
export function Refused({ faults, fields, id, tell }: Props) {
  const own = faults.filter(({ field }) => fields?.includes(field) ?? true);
  if (own.length === 0) return null;
  return (
    <div className="message" id={id} role="alert">
      {own.map(({ field, message, todo }) => (
        <p key={`${field} ${message}`}>
          <strong>{tell('file.refused', { message, todo })}</strong>
        </p>
      ))}
    </div>
  );
}
