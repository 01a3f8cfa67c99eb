import { useRef } from 'react';
import { roundTo, type Ticks } from '../../../trade/length.ts';
import type { Speak, Tell } from '../../speak.ts';
import { FeetInches } from '../FeetInches.tsx';

interface Props {
  readonly legend: string;
  readonly value: Ticks | undefined;
  /** `undefined` where the fields were emptied; nothing is told while they cannot be read. */
  readonly onValue: (value: Ticks | undefined) => void;
  /** Told whether what stands in the fields cannot be read. */
  readonly onUnread?: (unread: boolean) => void;
  readonly describedBy?: string | undefined;
  readonly tell: Tell;
  readonly speak: Speak;
}

/** A length that stands in a run: what the fields show at first is no edit, though it be rounded for the tape. */
export function LengthField({ legend, value, onValue, onUnread, describedBy, tell, speak }: Props) {
  const shown = useRef(value === undefined ? undefined : roundTo(value, 64));
  return (
    <FeetInches
      legend={legend}
      initial={value ?? null}
      tape={false}
      describedBy={describedBy}
      onReading={(reading) => {
        onUnread?.(reading.read === 'not');
        if (reading.read === 'not') return;
        const read = reading.read === 'length' ? reading.length : undefined;
        if (read === shown.current) return;
        shown.current = read;
        onValue(read);
      }}
      tell={tell}
      speak={speak}
    />
  );
}
