/** What keeps a draw from being taped: found in the form as it stands, so that no entry need report it. */

export type Held = 'unread' | 'unmoved' | 'picked' | 'nothing';

/**
 * `unread`: an entry is written but not read; the focus goes to it, for its own message says in words what to write.
 * `unmoved`: an order that nobody has touched, which is no answer; the focus stays, and the words stand beside the
 * button. `picked`: a part of a run was tapped and not named yet; the focus goes to its list. `null`: nothing holds. (`nothing`, no entry at all, is for the page to tell: a tap too many is no try.)
 */
export function heldBy(form: HTMLFormElement): Held | null {
  const unread = form.querySelector<HTMLElement>('[aria-invalid="true"]');
  unread?.focus();
  if (unread !== null) return 'unread';
  if (form.querySelector('.order.unmoved') !== null) return 'unmoved';
  const picked = form.querySelector<HTMLElement>('.picked select');
  picked?.focus();
  return picked === null ? null : 'picked';
}
