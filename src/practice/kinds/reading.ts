/** Something read off a figure: taken as the number, or the choice, that it is. */
import type { ReadingAsk } from '../family.ts';
import type { Answer } from '../model.ts';
import { choice } from './choice.ts';
import type { AnyKind, Kind } from './kind.ts';
import { number } from './number.ts';

const as = (ask: ReadingAsk) => ('options' in ask ? choice : number) as unknown as AnyKind;
const plain = (ask: ReadingAsk) => ask as never;

export const reading: Kind<ReadingAsk, Answer> = {
  read: (ask, value, asked) => as(ask).read(plain(ask), value, asked),
  same: (ask, given, wanted) => as(ask).same(plain(ask), given, wanted),
  near: (ask, given, wanted) => as(ask).near(plain(ask), given, wanted),
  apart: (ask, one, other) => as(ask).apart(plain(ask), one, other),
  faults: (ask, answer, right, asked) => as(ask).faults(plain(ask), answer, right, asked),
  explains: (ask, given, mistaken, right) => as(ask).explains(plain(ask), given, mistaken, right),
  show: (ask, showing) => as(ask).show(plain(ask), showing),
};
