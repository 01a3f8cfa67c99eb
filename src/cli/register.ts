/** `trayhand register …`: signed entries about what people were seen to do, and the board that follows from them. */
import { asWritten } from './register/options.ts';
import { answerVerb } from './register/verbs/answer.ts';
import { appointVerb } from './register/verbs/appoint.ts';
import { assignedVerb } from './register/verbs/assigned.ts';
import { beginVerb } from './register/verbs/begin.ts';
import { boardVerb } from './register/verbs/board.ts';
import { checkVerb } from './register/verbs/check.ts';
import { correctVerb } from './register/verbs/correct.ts';
import { eraseVerb } from './register/verbs/erase.ts';
import { keyVerb } from './register/verbs/key.ts';
import { mayVerb } from './register/verbs/may.ts';
import { mendVerb } from './register/verbs/mend.ts';
import { mergeVerb } from './register/verbs/merge.ts';
import { personVerb } from './register/verbs/person.ts';
import { retireVerb } from './register/verbs/retire.ts';
import { secondVerb } from './register/verbs/second.ts';
import { setVerb } from './register/verbs/set.ts';
import { settleVerb } from './register/verbs/settle.ts';
import { signVerb } from './register/verbs/sign.ts';
import { succeedVerb } from './register/verbs/succeed.ts';
import { takeOverVerb } from './register/verbs/takeOver.ts';
import { tasksVerb } from './register/verbs/tasks.ts';
import { ticketVerb } from './register/verbs/ticket.ts';
import { verifyVerb } from './register/verbs/verify.ts';
import { withdrawVerb } from './register/verbs/withdraw.ts';
import type { Group } from './verb.ts';

/** In the order of the manual: who begins, who signs, what is read. */
const verbs = [
  keyVerb,
  beginVerb,
  appointVerb,
  checkVerb,
  setVerb,
  answerVerb,
  signVerb,
  secondVerb,
  withdrawVerb,
  correctVerb,
  retireVerb,
  settleVerb,
  succeedVerb,
  takeOverVerb,
  eraseVerb,
  ticketVerb,
  assignedVerb,
  mendVerb,
  mergeVerb,
  verifyVerb,
  boardVerb,
  mayVerb,
  personVerb,
  tasksVerb,
];

export const group: Group = {
  name: 'register',
  line: 'signed entries about what people were seen to do, and who stands where',
  verbs: verbs.map(asWritten),
};
