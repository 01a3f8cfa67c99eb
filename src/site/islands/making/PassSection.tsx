import { FEWEST_TRIALS, sheetRuleFaults } from '../../../practice/passRule/rule.ts';
import type { Sheet } from '../../../practice/sheet.ts';
import { type Draft, drawsOf, type RuleKind, rulesFor } from '../../making/draft.ts';
import type { SiteKey, Speak, Tell } from '../../speak.ts';
import { PassRule } from '../register/PassRule.tsx';

interface Props {
  readonly draft: Draft;
  readonly sheet: Sheet | undefined;
  readonly onDraft: (draft: Draft) => void;
  readonly speak: Speak;
  readonly tell: Tell;
}

const shares = [50, 60, 70, 75, 80, 85, 90, 95, 98] as const;
const sure = [90, 95, 99] as const;
const errors = [1, 2, 5, 10, 15, 20] as const;

/** When the sheet is passed: the rule, its figures, and what they do to people, computed. */
export function PassSection({ draft, sheet, onDraft, speak, tell }: Props) {
  const draws = sheet === undefined ? 0 : drawsOf(sheet);
  const kinds = rulesFor(draws);
  const kind = kinds.includes(draft.rule) ? draft.rule : 'all';
  const faults = sheet === undefined ? [] : sheetRuleFaults(sheet.rule, draws);
  const choose = (key: SiteKey, values: readonly number[], value: number, set: (to: number) => void) => (
    <div key={key}>
      <label htmlFor={`rule-${key}`}>{tell(key)}</label>
      <select
        id={`rule-${key}`}
        value={Math.round(value * 100)}
        onChange={(event) => set(Number(event.currentTarget.value) / 100)}
      >
        {values.map((one) => (
          <option key={one} value={one}>
            {tell('making.ofHundred', { value: one })}
          </option>
        ))}
      </select>
    </div>
  );
  const bound = (change: Partial<Draft['bound']>) =>
    onDraft({ ...draft, bound: { ...draft.bound, ...change } });
  const wald = (change: Partial<Draft['wald']>) => onDraft({ ...draft, wald: { ...draft.wald, ...change } });
  const { p0, p1, alpha, beta } = draft.wald;
  return (
    <section>
      <h2 className="view-title">{tell('making.rule')}</h2>
      <label htmlFor="rule-kind">{tell('making.ruleKind')}</label>
      <select
        id="rule-kind"
        value={kind}
        onChange={(event) => onDraft({ ...draft, rule: event.currentTarget.value as RuleKind })}
      >
        {kinds.map((one) => (
          <option key={one} value={one}>
            {tell(`making.rule-${one}`)}
          </option>
        ))}
      </select>
      {kinds.length === 1 && <p className="hint">{tell('making.few', { fewest: FEWEST_TRIALS })}</p>}
      {kind === 'bound' && (
        <div className="fields two">
          {choose('making.confidence', sure, draft.bound.confidence, (confidence) => bound({ confidence }))}
          {choose('making.share', shares, draft.bound.share, (share) => bound({ share }))}
        </div>
      )}
      {kind === 'sequential' && (
        <div className="fields two">
          {choose('making.p0', [30, 40, ...shares], p0, (to) => wald({ p0: to }))}
          {choose('making.alpha', errors, alpha, (to) => wald({ alpha: to }))}
          {choose('making.p1', shares, p1, (to) => wald({ p1: to }))}
          {choose('making.beta', errors, beta, (to) => wald({ beta: to }))}
        </div>
      )}
      {faults.map(({ message, todo }) => (
        <p className="message" key={message}>
          <strong>{tell('making.cannot', { message, todo })}</strong>
        </p>
      ))}
      {sheet !== undefined && faults.length === 0 && <PassRule sheet={sheet} speak={speak} />}
    </section>
  );
}
