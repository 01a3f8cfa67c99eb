import { textParts } from '../../practice.ts';
import { unbroken } from '../../speak.ts';

/** The text of a draw in one place: what it is about, and what has to hold in it. */
export function DrawText({ text }: { readonly text: string }) {
  const { lead, rules } = textParts(text);
  return (
    <>
      <p>{unbroken(lead)}</p>
      {rules.length > 0 && <Rules rules={rules} />}
    </>
  );
}

/** What has to hold in a draw. */
export function Rules({ rules }: { readonly rules: readonly string[] }) {
  return (
    <ul className="rules">
      {rules.map((rule) => (
        <li key={rule}>{unbroken(rule)}</li>
      ))}
    </ul>
  );
}
