/** When something secret has to go: the page is left, hidden, or two minutes are over. */

/** How long a key stays open, and a passphrase that nobody touches stands in its field, ms. */
export const IDLE = 120_000;

/**
 * Calls `forget` each time the page is left or hidden, and once after `ms`.
 * @returns stops all of it
 */
export function onLeaving(forget: () => void, ms = IDLE): () => void {
  const hidden = () => {
    if (document.visibilityState === 'hidden') forget();
  };
  const timer = setTimeout(forget, ms);
  addEventListener('pagehide', forget);
  document.addEventListener('visibilitychange', hidden);
  return () => {
    clearTimeout(timer);
    removeEventListener('pagehide', forget);
    document.removeEventListener('visibilitychange', hidden);
  };
}
