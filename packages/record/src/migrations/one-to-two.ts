import { isPlain, type MigrationStep, type PlainRecord } from './step.ts';

const SET_BY_UP = 'not-said';

/** Parts of a plan that version 1 has no place for, with what it cannot say. */
const NEW_PARTS = {
  washing: 'version 1 cannot say how the garment is washed',
  sewn: 'version 1 cannot say whether it is sewn before it is pinned',
  stock: 'version 1 cannot say which pins are at hand',
  mat: 'version 1 cannot say how large the mat is',
  pins: 'version 1 cannot say which pins were moved',
} as const;

/** Version 2 asks how the garment will be washed, and may hold what is at hand to pin it with. */
export const oneToTwo: MigrationStep = {
  from: 1,
  to: 2,
  up: (record) => ({ ...record, version: 2, ...withPlan(record, addWashing) }),
  down: (record) => {
    const plan = isPlain(record.plan) ? record.plan : {};
    const lost = Object.entries(NEW_PARTS)
      .filter(([part]) => plan[part] !== undefined && plan[part] !== SET_BY_UP)
      .map(([part, problem]) => ({ field: `plan.${part}`, given: textOf(plan[part]), problem }));
    return { plain: { ...record, version: 1, ...withPlan(record, dropNew) }, lost };
  },
};

const textOf = (value: unknown): string =>
  typeof value === 'object' ? JSON.stringify(value) : String(value);

const withPlan = (record: PlainRecord, change: (plan: PlainRecord) => PlainRecord) =>
  isPlain(record.plan) ? { plan: change(record.plan) } : {};

const addWashing = (plan: PlainRecord): PlainRecord => ({ washing: SET_BY_UP, ...plan });

const dropNew = (plan: PlainRecord): PlainRecord =>
  Object.fromEntries(Object.entries(plan).filter(([part]) => !(part in NEW_PARTS)));
