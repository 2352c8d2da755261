import { isPlain, type MigrationStep, type PlainRecord } from './step.ts';

const SET_BY_UP = 'not-said';

/** Version 2 asks how the garment will be washed: `plan.washing`. */
export const oneToTwo: MigrationStep = {
  from: 1,
  to: 2,
  up: (record) => ({ ...record, version: 2, ...withPlan(record, addWashing) }),
  down: (record) => {
    const washing = isPlain(record.plan) ? record.plan.washing : undefined;
    const lost =
      washing === undefined || washing === SET_BY_UP
        ? []
        : [
            {
              field: 'plan.washing',
              given: String(washing),
              problem: 'version 1 cannot say how the garment is washed',
            },
          ];
    return { plain: { ...record, version: 1, ...withPlan(record, dropWashing) }, lost };
  },
};

const withPlan = (record: PlainRecord, change: (plan: PlainRecord) => PlainRecord) =>
  isPlain(record.plan) ? { plan: change(record.plan) } : {};

const addWashing = (plan: PlainRecord): PlainRecord => ({ washing: SET_BY_UP, ...plan });

const dropWashing = ({ washing: _, ...rest }: PlainRecord): PlainRecord => rest;
