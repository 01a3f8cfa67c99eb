/** What keeps a draw from being taped: found in the form as it stands, so that no entry need report it. */

export type Held = 'unread' | 'unmoved';

/**
 * Moves the focus to the first entry that cannot be taken yet, whose own message says in words what to do. `unread`: it
 * is written but not read; `unmoved`: an order that nobody has touched, which is no answer. `null`: nothing holds.
 */
export function heldBy(form: HTMLFormElement): Held | null {
  const unread = form.querySelector<HTMLElement>('[aria-invalid="true"]');
  unread?.focus();
  if (unread !== null) return 'unread';
  const button = form.querySelector<HTMLElement>('.order.unmoved button:enabled');
  button?.focus();
  return button === null ? null : 'unmoved';
}
