/** Whether a sheet still shows its own example: until the first change, and never again after it. */
import { useState } from 'react';

/** @param untouched  whether every entry reads what the example says */
export function useExample(untouched: boolean): boolean {
  const [left, setLeft] = useState(false);
  if (!untouched && !left) setLeft(true);
  return untouched && !left;
}
