/** A whole number from 1 to `most` as a person writes it; undefined for anything else. */
export function wholeIn(text: string, most: number): number | undefined {
  const number = Number(text.trim());
  return /^\d+$/.test(text.trim()) && number >= 1 && number <= most ? number : undefined;
}
