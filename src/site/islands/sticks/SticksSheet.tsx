import { useMemo, useRef, useState } from 'react';
import type { Answered } from '../../../trade/answer.ts';
import type { SticksResult } from '../../../trade/sticks/types.ts';
import { entryAt } from '../../calculators/answer.ts';
import type { Form } from '../../calculators/fields.ts';
import { formOf, type Message, readForm } from '../../calculators/form.ts';
import { usual } from '../../settings.ts';
import { speaker, teller, type WordTable } from '../../speak.ts';
import { jobOf, type SticksForm, sticksExample, sticksFields } from '../../sticks/fields.ts';
import { cutFrom, type Rack } from '../../sticks/rack.ts';
import { answerOf, proofOf } from '../../sticks/said.ts';
import { Arrow } from '../Arrow.tsx';
import { useExample } from '../example.ts';
import { Refused } from '../Refused.tsx';
import { SumForm, takenOver } from '../SumEntries.tsx';
import { useTakenOver } from '../taken.ts';
import { useSettings } from '../useSettings.ts';
import { Booking } from './Booking.tsx';
import { Looking } from './Looking.tsx';
import { Plan } from './Plan.tsx';
import { RackSection } from './RackSection.tsx';
import { useRack } from './useRack.ts';
import { useSearch } from './useSearch.ts';

interface Props {
  readonly words: WordTable;
  /** The answer to the example, worked out when the page was built. */
  readonly plan: Answered<SticksResult>;
}

const begun = formOf(sticksFields, sticksExample, usual);
const known = jobOf(sticksExample, []);

/** A plan whose sticks were cut: it stays as it is while the form does, whatever happens to the rack. */
interface Booked {
  readonly form: Form;
  readonly before: Rack;
  readonly after: Rack;
}

/** The cutting plan: answer, bars, cut list, sum; pieces, sticks and the rack. */
export default function SticksSheet({ words, plan: knownPlan }: Props) {
  const speak = useMemo(() => speaker(words), [words]);
  const tell = useMemo(() => teller(words), [words]);
  const settings = useSettings();
  const element = useRef<HTMLFormElement>(null);
  const [form, setForm] = useState<Form>(begun);
  const [booked, setBooked] = useState<Booked | null>(null);
  const held = useRack();
  useTakenOver(element, (values) => setForm((old) => takenOver(sticksFields, old, values, '')));

  const read = readForm(sticksFields, form, settings);
  const asked = read.given as SticksForm | undefined;
  const same = (other: Form) => JSON.stringify(other) === JSON.stringify(form);
  const isExample = useExample(same(begun));
  const isBooked = booked !== null && same(booked.form);
  const given = asked && jobOf(asked, isBooked ? booked.before : held.rack);
  const search = useSearch(given, { given: known, plan: knownPlan });
  const { plan, faults, standing } = search;
  const placed = placedFaults(faults, form);
  const messages = { ...read.messages, ...placed.messages };
  const looking = standing === 'looking';
  const done = plan !== undefined && !looking && plan.result.feasible;
  const said = (text: string) => (isExample ? tell('sums.example', { text }) : text);
  const proof = plan && given && proofOf(plan.result, given, tell);

  const book = (after: (rack: Rack) => Rack) => {
    setBooked({ form, before: held.rack, after: after(held.rack) });
    held.change(after);
  };
  const unbook = (before: Rack) => {
    setBooked(null);
    held.change(() => before);
  };

  return (
    <>
      <section className="answer" aria-live="polite" id="sum-answer">
        {plan !== undefined && given !== undefined ? (
          <>
            <p className="huge">{said(answerOf(plan.result, given, looking, tell))}</p>
            {proof !== undefined && <p>{proof}</p>}
            {plan.result.why?.map((why) => (
              <p key={why.say}>{speak(why)}</p>
            ))}
          </>
        ) : (
          <p className="huge">
            {tell(
              Object.keys(messages).length > 0 || placed.rest.length > 0
                ? 'sums.look'
                : asked === undefined
                  ? 'sums.nothing'
                  : standing === 'noSolver'
                    ? 'sticksSheet.noSolver'
                    : 'sticksSheet.wait',
            )}
          </p>
        )}
        <Refused faults={placed.rest} tell={tell} />
      </section>
      {given !== undefined && <Looking search={search} tell={tell} />}
      <p className="at-phone change">
        <a className="button second" href="#sum-given">
          {tell('sums.change')} <Arrow />
        </a>
      </p>
      <div className="columns">
        <div>
          {plan?.result.feasible && given !== undefined && (
            <>
              <Plan plan={plan} given={given} settings={settings} speak={speak} tell={tell} />
              <div className="buttons off-paper">
                <button
                  type="button"
                  className="button second"
                  data-print
                  disabled={!done}
                  onClick={() => window.print()}
                >
                  {tell('sticksSheet.print')} <Arrow />
                </button>
              </div>
            </>
          )}
        </div>
        <div className="off-paper">
          <SumForm
            element={element}
            title={tell('sticksSheet.yours')}
            fields={sticksFields}
            form={form}
            messages={messages}
            onForm={setForm}
            settings={settings}
            tell={tell}
            speak={speak}
          />
          <RackSection held={held} tell={tell} speak={speak}>
            {done && asked !== undefined && (
              <Booking
                lengths={plan.result.lengths}
                least={asked.least}
                example={isExample}
                booked={isBooked}
                onBook={() => book((rack) => cutFrom(rack, plan.result.lengths, asked.least))}
                onUnbook={
                  isBooked && JSON.stringify(booked.after) === JSON.stringify(held.rack)
                    ? () => unbook(booked.before)
                    : undefined
                }
                tell={tell}
              />
            )}
          </RackSection>
        </div>
      </div>
    </>
  );
}

/** What the core refused: beside its entry where it names one, the rest under the answer. */
function placedFaults(faults: Parameters<typeof Refused>[0]['faults'], form: Form) {
  const messages: Record<string, Message> = {};
  const rest = faults.filter(({ field, message, todo }) => {
    if (!field.includes('[')) return true;
    messages[entryAt(field, form)] = { key: 'file.refused', values: { message, todo } };
    return false;
  });
  return { messages, rest };
}
