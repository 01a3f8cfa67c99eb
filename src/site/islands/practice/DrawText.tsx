import { textParts } from '../../practice.ts';
import { unbroken } from '../../speak.ts';

interface Props {
  readonly text: string;
}

/** The text of a draw in one place: what it is about, and what has to hold in it. */
export function DrawText({ text }: Props) {
  return (
    <>
      <p>{unbroken(textParts(text).lead)}</p>
      <Rules text={text} />
    </>
  );
}

/** What has to hold in a draw; nothing where its text is its lead alone. */
export function Rules({ text }: Props) {
  const { rules } = textParts(text);
  if (rules.length === 0) return null;
  return (
    <ul className="rules">
      {rules.map((rule) => (
        <li key={rule}>{unbroken(rule)}</li>
      ))}
    </ul>
  );
}
