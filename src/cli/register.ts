/** `trayhand register …`: signed entries about what people were seen to do, and the board that follows from them. */
import { asWritten } from './register/options.ts';
import { appointVerb } from './register/verbs/appoint.ts';
import { beginVerb } from './register/verbs/begin.ts';
import { boardVerb } from './register/verbs/board.ts';
import { checkVerb } from './register/verbs/check.ts';
import { keyVerb } from './register/verbs/key.ts';
import { mayVerb } from './register/verbs/may.ts';
import { personVerb } from './register/verbs/person.ts';
import { tasksVerb } from './register/verbs/tasks.ts';
import { verifyVerb } from './register/verbs/verify.ts';
import type { Group } from './verb.ts';

/** In the order of the manual: who begins, who signs, what is read. */
const verbs = [
  keyVerb,
  beginVerb,
  appointVerb,
  checkVerb,
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
