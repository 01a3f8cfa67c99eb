/** The sheet being made, kept on this device so that a reload loses nothing. One that cannot be read is begun anew. */
import { type Draft, newDraft } from './draft.ts';

const place = 'trayhand-making';

export function keepDraft(draft: Draft): void {
  try {
    localStorage.setItem(place, JSON.stringify(draft));
  } catch {
    // A device that keeps nothing makes sheets all the same.
  }
}

export function keptDraft(number: number): Draft {
  const fresh = newDraft(number);
  try {
    const kept = JSON.parse(localStorage.getItem(place) ?? 'null') as Partial<Draft> | null;
    if (kept === null || typeof kept !== 'object' || !Array.isArray(kept.tasks)) return fresh;
    return { ...fresh, ...kept };
  } catch {
    return fresh;
  }
}
