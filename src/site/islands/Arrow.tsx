/** The dimension arrow at the right of a button. */
export function Arrow() {
  return (
    <svg viewBox="0 0 34 12" width="34" height="12" aria-hidden="true" focusable="false">
      <path d="M0 6H24" stroke="currentColor" strokeWidth="2.5" />
      <path d="M34 6L20 1V11Z" fill="currentColor" />
    </svg>
  );
}
