/** Taking over what was chosen before script came: form fields that hold a value React never heard of. */
import { type RefObject, useEffect } from 'react';

/** Calls `take` once, on mount, with the values that the form's named fields hold. */
export function useTakenOver(
  form: RefObject<HTMLFormElement | null>,
  take: (values: FormData) => void,
): void {
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when script takes the page over
  useEffect(() => {
    if (form.current !== null) take(new FormData(form.current));
  }, []);
}
