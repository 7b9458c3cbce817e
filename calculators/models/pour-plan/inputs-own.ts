import type { Input } from '../../core/model.ts';

/** What the reader's own pours have shown; left open, the plan works from the books alone. */
export const ownInputs: Readonly<Record<string, Input>> = {
  'own.constant': {
    kind: 'quantity',
    name: 'Your own mould constant',
    note: 'From sections you timed, in this metal and mould and as warm as now. The book’s time stays beside it.',
    group: 'From your own pours',
    unit: 's/m²',
    show: 's/mm²',
    range: [10_000, 1e8],
    why: 'a test casting outside this is more likely a slip of units',
  },
  'own.margin': {
    kind: 'quantity',
    name: 'Your own fill factor',
    note: 'The margin at which half your sections fill. The book’s is 1; the plan wants half as much again.',
    group: 'From your own pours',
    unit: '1',
    range: [0.05, 20],
    why: 'outside this the times of the plan and of your pours do not speak of the same thing',
  },
};
