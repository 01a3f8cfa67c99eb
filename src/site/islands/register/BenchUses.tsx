import { useEffect, useState } from 'react';
import type { Judged } from '../../../register/judged.ts';
import { type Bench, usesOf } from '../../../register/usedBenches.ts';
import { ownRegister } from '../../device/register.ts';
import { shortKey } from '../../shortKey.ts';
import type { Tell } from '../../speak.ts';

interface Props {
  readonly person: string;
  readonly of: Bench;
  readonly tell: Tell;
}

/** Looks in the register of this device whether a person has had a bench already. */
export function BenchUses({ person, of, tell }: Props) {
  const [judged, setJudged] = useState<Judged | null>();
  useEffect(() => {
    // A register that cannot be opened is the affair of its own page; here it answers nothing.
    ownRegister().then(
      (opened) => setJudged(opened?.judged ?? null),
      () => setJudged(null),
    );
  }, []);
  if (judged === undefined) return null;
  const about = { person, bench: of.bench };
  if (judged === null) return <p className="hint">{tell('setPage.unlooked', about)}</p>;
  const uses = usesOf(judged, person, of);
  if (uses.length === 0) return <p className="hint">{tell('setPage.unused', about)}</p>;
  return uses.map(({ entry, task }) => (
    <p className="message" key={entry}>
      <strong>{tell('setPage.used', { ...about, entry: shortKey(entry), task })}</strong>
    </p>
  ));
}
