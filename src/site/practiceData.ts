/** Families, sheets and the world as one file of JSON, which pages that set and grade sheets fetch once they stand. */
import type { Family } from '../practice/family.ts';
import type { WorldData } from '../practice/model.ts';
import type { Sheet } from '../practice/sheet.ts';
import type { WordTable } from './speak.ts';

export interface PracticeData {
  readonly families: readonly Family[];
  readonly sheets: readonly Sheet[];
  readonly world: WorldData;
  /** By language: the groups that grading and the working of any family say. */
  readonly words: Readonly<Record<string, WordTable>>;
}

/** JSON knows no Map: one is written as its entries under this name, which no content uses. */
const MAP = '$map';

export const writePracticeData = (data: PracticeData): string =>
  JSON.stringify(data, (_, value: unknown) => (value instanceof Map ? { [MAP]: [...value] } : value));

/** Only for what `writePracticeData` of the same release wrote. */
export const readPracticeData = (text: string): PracticeData =>
  JSON.parse(text, (_, value: unknown) =>
    typeof value === 'object' && value !== null && MAP in value
      ? new Map(value[MAP] as [string, unknown][])
      : value,
  ) as PracticeData;
