/** How far cables may cross from tray to tray, raceway or equipment without tray under them. */
import type { Answered, Say, Step } from './answer.ts';
import { type ByEdition, type Edition, NEWEST } from './editions.ts';
import { figures } from './figure.ts';
import { atMost } from './hair.ts';
import { inches, type Ticks } from './length.ts';

export interface OpenGapRule {
  readonly limit: Ticks;
  /** Editions whose words cover multiconductor cables. */
  readonly judged: readonly Edition[];
  readonly sources: ByEdition;
}

export interface TransitionGiven {
  /** From 0. */
  readonly gapFt: number;
  /** The cables are fastened on both sides of the gap. */
  readonly secured: boolean;
  /** They are guarded, or lie where nothing can strike them. */
  readonly guarded: boolean;
  readonly edition?: Edition | undefined;
}

export interface TransitionResult {
  readonly holds: boolean | null;
  readonly limitFt: number;
  readonly refer: boolean;
  /** Why it is referred. */
  readonly why?: readonly Say[];
}

export function transition(given: TransitionGiven, rule: OpenGapRule): Answered<TransitionResult> {
  const { gapFt, secured, guarded, edition = NEWEST } = given;
  const limitFt = inches(rule.limit) / 12;
  const sources = [rule.sources[edition]];
  const [gap, limit] = figures(gapFt, limitFt);
  if (!rule.judged.includes(edition)) {
    const why: Say[] = [{ say: 'transition.singles', values: { limit, edition } }, { say: 'transition.ask' }];
    return { result: { holds: null, limitFt, refer: true, why }, steps: why, sources };
  }
  const short = atMost(gapFt, limitFt);
  const steps: Step[] = [
    { say: short ? 'transition.within' : 'transition.over', values: { gap, limit } },
    { say: secured ? 'transition.secured' : 'transition.loose' },
    { say: guarded ? 'transition.guarded' : 'transition.open' },
    { say: 'transition.jumper' },
  ];
  return { result: { holds: short && secured && guarded, limitFt, refer: false }, steps, sources };
}
