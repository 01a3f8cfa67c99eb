/** What a learner is told of a draw, and how its lengths and numbers are read. Shares no code with src/. */

export interface Told {
  readonly text: string;
  readonly givens: readonly {
    readonly id: string;
    readonly label: string;
    readonly value: number | string;
    readonly unit: string;
    readonly text: string;
  }[];
  readonly figures: readonly { readonly words: string }[];
  readonly asks: readonly {
    readonly id: string;
    readonly kind: string;
    readonly prompt: string;
    readonly unit?: string;
    readonly options?: readonly { readonly id: string; readonly text: string }[];
    readonly items?: readonly { readonly id: string; readonly text: string }[];
    readonly parts?: Told['asks'];
  }[];
}
export type Worked = Readonly<Record<string, unknown>>;
export type SecondOpinion = (told: Told) => Worked;

/** `12'-3 1/2"`, `3 1/2"`, `1/8"`, `5'`, `12 ft 3 1/2 in`, as inches. */
export function inchesOf(text: string): number {
  const said = text.replaceAll(/ ?ft\b/g, "'").replaceAll(/ ?in\b/g, '"').trim();
  const [, feet, rest = ''] = /^(?:(\d+)')?[ -]*(.*?)"?$/.exec(said) ?? [];
  const parts = rest.trim().split(/\s+/).filter((part) => part !== '');
  const total = parts.reduce((sum, part) => {
    const [over, under] = part.split('/').map(Number);
    return sum + (over ?? Number.NaN) / (under ?? 1);
  }, Number(feet ?? 0) * 12);
  if (!Number.isFinite(total)) throw new Error(`no length: ${text}`);
  return total;
}

/** The given of an id; with a number behind it where there are rows. */
export function given(told: Told, id: string): Told['givens'][number] {
  const found = told.givens.find((one) => one.id === id);
  if (found === undefined) throw new Error(`nothing is given as ${id}`);
  return found;
}

/** The givens of rows: `cable-1`, `cable-2` … */
export const rowsOf = (told: Told, id: string) =>
  told.givens.filter((one) => new RegExp(`^${id}-\\d+$`).test(one.id));

export const lengthOf = (told: Told, id: string): number => inchesOf(given(told, id).text);

/** The first number in a text. */
export function numberIn(text: string): number {
  const found = /-?\d+(?:\.\d+)?/.exec(text);
  if (found === null) throw new Error(`no number: ${text}`);
  return Number(found[0]);
}

/** To the nearest sixteenth of an inch. */
export const sixteenth = (inch: number): number => Math.round(inch * 16) / 16;
