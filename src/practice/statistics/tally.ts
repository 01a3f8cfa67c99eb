/** What first tries say of a family: how many hold, of every ask too, and which mistakes were made how often. */
import { type Share, shareOf } from './share.ts';
import { mistakesOf, type Tried } from './tries.ts';

export interface MistakeTally {
  readonly mistake: string;
  readonly made: number;
  /** Answers to draws on which it can be made. */
  readonly of: number;
  /** What it says, as one of those who made it was told. */
  readonly says: string;
}

export interface AskTally {
  readonly ask: string;
  /** What was asked, as one who answered read it. */
  readonly prompt: string;
  /** Holds, or holds from there. */
  readonly share: Share;
  readonly near: number;
  readonly blank: number;
  /** To be reworked, with no mistake that is known. */
  readonly unknown: number;
  /** The most frequent first; of equals in the order of the alphabet. */
  readonly mistakes: readonly MistakeTally[];
}

export interface FamilyTally {
  readonly family: string;
  /** Who gave the answers. */
  readonly people: number;
  /** Draws passed, of draws tried. */
  readonly share: Share;
  /** In the order of the family's file. */
  readonly asks: readonly AskTally[];
}

/** One tally a family, in the order in which families first come. */
export function tallies(tried: readonly Tried[]): readonly FamilyTally[] {
  return [...Map.groupBy(tried, ({ family }) => family)].map(([family, tries]) => ({
    family,
    people: new Set(tries.map(({ who }) => who)).size,
    share: shareOf(tries.filter(({ passed }) => passed).length, tries.length),
    asks: [...new Set(tries.flatMap(({ findings }) => findings.map(({ ask }) => ask)))].map((ask) =>
      askTally(ask, tries),
    ),
  }));
}

function askTally(ask: string, tries: readonly Tried[]): AskTally {
  const found = tries.flatMap((one) =>
    one.findings.filter((finding) => finding.ask === ask).map((finding) => ({ one, finding })),
  );
  const count = (counts: (finding: Tried['findings'][number]) => boolean) =>
    found.filter(({ finding }) => counts(finding)).length;
  const made = new Set(found.flatMap(({ finding }) => mistakesOf(finding)));
  return {
    ask,
    prompt: found[0]?.one.asked[ask] ?? ask,
    share: shareOf(
      count(({ verdict }) => verdict === 'holds' || verdict === 'holds from there'),
      found.length,
    ),
    near: count(({ verdict }) => verdict === 'near'),
    blank: count(({ verdict }) => verdict === 'blank'),
    unknown: count(({ verdict, mistake }) => verdict === 'rework' && mistake === null),
    mistakes: [...made]
      .map((mistake): MistakeTally => {
        const those = found.filter(({ finding }) => mistakesOf(finding).includes(mistake));
        const able = found.filter(({ one }) => one.could[ask]?.includes(mistake));
        return {
          mistake,
          made: those.length,
          of: new Set([...those, ...able]).size,
          says: those.map(({ one }) => one.told[mistake]).find((says) => says !== undefined) ?? mistake,
        };
      })
      .sort((a, b) => b.made - a.made || (a.mistake < b.mistake ? -1 : 1)),
  };
}
