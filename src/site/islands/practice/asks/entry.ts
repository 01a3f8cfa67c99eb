import type { Draw } from '../../../../practice/draw.ts';
import type { Answer, World } from '../../../../practice/model.ts';
import type { ShownAsk } from '../../../../practice/show.ts';
import type { Speak, Tell } from '../../../speak.ts';
import type { Taped } from '../../../taped.ts';

export type AskAnswer = Answer | undefined;

/** What an entry is given. `A` is what it takes of an answer; it draws anew from `answer` where it can. */
export interface EntryProps<A extends Answer = Answer> {
  readonly ask: ShownAsk;
  readonly answer: A | undefined;
  /** `undefined` is a blank, or something that cannot be read yet. */
  readonly onAnswer: (answer: Answer | undefined) => void;
  /** The draw, and the ask of it that holds this one: of a part the job's step. */
  readonly draw: Draw;
  readonly within: string;
  readonly world: World;
  /** What was found of this very answer; `undefined` before it was taped, and once it was changed. */
  readonly taped?: Taped | undefined;
  readonly tell: Tell;
  readonly speak: Speak;
}
