/**
 * What a run may say that is not built yet. Each is answered by a fault, so that nothing given is passed over in
 * silence; a kind that gets built loses its line here.
 */
import type { Fault } from '../trade/given.ts';
import type { Run } from './types.ts';

type Found = { readonly field: string; readonly value: unknown } | false;
interface NotYet {
  readonly what: string;
  readonly todo: string;
  readonly find: (run: Run) => readonly Found[];
}

/** One row a field of a list's elements: found where the test says so. */
function each<T>(name: string, list: readonly T[] | undefined, field: string, test: (v: unknown) => boolean) {
  return (list ?? []).map((element, i): Found => {
    const value = (element as Record<string, unknown>)[field];
    return test(value) && { field: `${name}[${i}].${field}`, value };
  });
}

const given = (v: unknown) => v !== undefined;
const among =
  (...kinds: readonly unknown[]) =>
  (v: unknown) =>
    kinds.includes(v);
const whole = (field: keyof Run) => (run: Run) => {
  const value = run[field];
  return [(Array.isArray(value) ? value.length > 0 : value !== undefined) && { field, value }];
};

const LEAVE_OUT = 'leave it out; nothing follows from it yet';

const LIST: readonly NotYet[] = [
  {
    what: 'a second leg',
    todo: 'give one straight leg a run',
    find: ({ legs }) => legs.slice(1).map((leg, i) => ({ field: `legs[${i + 1}]`, value: leg.id })),
  },
  {
    what: 'a fitting',
    todo: 'write null: the leg leaves the start without one',
    find: ({ legs }) => each('legs', legs.slice(0, 1), 'fitting', (v) => v !== null),
  },
  {
    what: 'this kind of joint',
    todo: 'use socketed for a sleeve, butt for a plate',
    find: ({ joints }) => each('joints', joints, 'kind', among('hinged', 'expansion', 'gap')),
  },
  {
    what: 'an expansion joint at the start',
    todo: 'use socketed, butt or free',
    find: ({ start }) => [start.joint === 'expansion' && { field: 'start.joint', value: start.joint }],
  },
  {
    what: 'an expansion joint at an end',
    todo: 'use socketed, butt or free',
    find: ({ ends }) => each('ends', ends, 'joint', among('expansion')),
  },
  {
    what: 'a fastener in a large hole',
    todo: 'use the small holes, and leave it out',
    find: ({ joints }) => each('joints', joints, 'hole', among('large')),
  },
  {
    what: 'lying on edge, a barrier or a reducer',
    todo: LEAVE_OUT,
    find: ({ legs }) => [
      ...each('legs', legs, 'onEdge', among(true)),
      ...each('legs', legs, 'barrier', among(true)),
      ...each('legs', legs, 'keeps', given),
    ],
  },
  {
    what: 'bonding',
    todo: LEAVE_OUT,
    find: ({ start, legs, ends, joints }) =>
      ['bare', 'jumper'].flatMap((field) => [
        ...each('start', [start], field, given).map((f) => f && { ...f, field: `start.${field}` }),
        ...each('legs', legs, field, given),
        ...each('ends', ends, field, given),
        ...each('joints', joints, field, given),
      ]),
  },
  { what: 'a list of cables', todo: LEAVE_OUT, find: whole('cables') },
  { what: 'a list of marks', todo: LEAVE_OUT, find: whole('marks') },
  { what: 'a list of places', todo: LEAVE_OUT, find: whole('places') },
  { what: 'limits', todo: LEAVE_OUT, find: whole('limits') },
  { what: 'temperatures', todo: LEAVE_OUT, find: whole('temps') },
];

/** Faults for all that is given and not built yet. */
export function notYet(run: Run): readonly Fault[] {
  return LIST.flatMap(({ what, todo, find }) =>
    find(run).flatMap((found) => (found ? [{ ...found, message: `${what} is not built yet`, todo }] : [])),
  );
}
