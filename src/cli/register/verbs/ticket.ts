import { ticket } from '../../../register/acts/ticket.ts';
import type { Verb } from '../../verb.ts';
import { common, Options } from '../options.ts';
import { folderOf, write } from '../write.ts';

export const ticketVerb: Verb = {
  name: 'ticket',
  line: 'owner or witness records an outside ticket that he looked at; it is never assessed',
  words: ['DIR'],
  options: {
    key: { value: 'KEY', needed: true, line: 'key file of the owner or of a witness' },
    person: { value: 'ID', needed: true, line: 'whose ticket it is' },
    ticket: { value: 'W1–W8', needed: true, line: 'which ticket' },
    issuer: { value: 'TEXT', needed: true, line: 'who issued it' },
    number: { value: 'TEXT', needed: true, line: 'the number that it bears' },
    until: { value: 'DATE', needed: true, line: 'the last day that it is good' },
    ...common,
  },
  manual: () => ['Comes back: entry (its id).'],
  run: async (call) => {
    const options = new Options(call);
    const now = await options.setting();
    const given = {
      person: options.need('person', 'write whose ticket it is'),
      ticket: options.need('ticket', 'write W1 to W8'),
      issuer: options.need('issuer', 'write who issued it'),
      number: options.need('number', 'write the number that it bears'),
      until: options.day('until', true) ?? '',
    };
    const signer = await options.signer('key');
    return write(folderOf(call), options, signer, now, ({ judged }, writing) =>
      ticket(judged, given, writing),
    );
  },
};
