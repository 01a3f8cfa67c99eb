import { useMemo } from 'react';
import { statedRates } from '../../../practice/passRule/rates.ts';
import { passRuleOf } from '../../../practice/passRule/rule.ts';
import { saysOfRates, saysOfRule } from '../../../practice/passRule/words.ts';
import { type Sheet, sheetPlaces } from '../../../practice/sheet.ts';
import type { Speak } from '../../speak.ts';

interface Props {
  readonly sheet: Pick<Sheet, 'id' | 'families' | 'rule'>;
  /** Speaks the group `passRule`. */
  readonly speak: Speak;
}

/** The rule of a sheet in words, with what it does to people of a stated skill: both errors, computed. */
export function PassRule({ sheet, speak }: Props) {
  const { says, rates } = useMemo(() => {
    const rule = passRuleOf(sheet.rule);
    const draws = sheetPlaces(sheet, 1).length;
    return {
      says: saysOfRule(rule, draws),
      rates: statedRates(rule, draws).map((one) => ({ p: one.p, says: saysOfRates(one, rule) })),
    };
  }, [sheet]);
  return (
    <>
      {says.map((say) => (
        <p key={say.say}>{speak(say)}</p>
      ))}
      <details className="opens">
        <summary>{speak({ say: 'passRule.rates' })}</summary>
        <div>
          <ul className="rates">
            {rates.map(({ p, says: lines }) => (
              <li key={p}>{lines.map((say) => speak(say)).join(' ')}</li>
            ))}
          </ul>
          <p className="note">{speak({ say: 'passRule.ratesNote' })}</p>
        </div>
      </details>
    </>
  );
}
