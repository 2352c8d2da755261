import { BODY_TABLES, type BodyTable } from '../../garment/index.ts';
import { mm } from '../../units/index.ts';
import { judge } from '../knit/judge.ts';
import { personTargets } from '../knit/targets.ts';
import { knitNow, NO_WORK } from '../price/work.ts';
import type { PersonToFit } from '../types.ts';
import { plannedMat } from './afresh.ts';
import { type Bench, type Draft, nothing, type Opened, spoken, together } from './draft.ts';
import { finishing } from './drying.ts';

interface Candidate {
  readonly person: PersonToFit;
  readonly draft: Draft;
  readonly chance: number;
}

/** Somebody with the bodies of a table's size, from its middle. */
const fromTable = (table: BodyTable): PersonToFit[] =>
  table.sizes.map((size, column) => ({
    id: `table:${table.id}:${size}`,
    name: `${table.id}, size ${size}`,
    body: table.rows.flatMap(({ body, values }) => {
      const value = values[column];
      return value === null || value === undefined
        ? []
        : [{ body, mm: mm((value.low + value.high) / 2), from: 'table' as const }];
    }),
  }));

const nameOf = ({ begun, question }: Bench, person: PersonToFit): string => {
  const verb = question.dried ? 'Give it to' : begun > 0 ? 'Finish it for' : 'Knit it for';
  return person.id.startsWith('table:')
    ? `${verb} somebody of a published size: ${person.name}`
    : `${verb} ${person.name}`;
};

const candidate = (bench: Bench, person: PersonToFit): Candidate | null => {
  const judged = personTargets(bench.forecast, bench.luck, person);
  if (judged.targets.length === 0) return null;
  const { chanceAll } = judge(bench.luck, bench.planned, judged, bench.forecast.judgeAt);
  const skipped = judged.unknown.map(spoken).join(', ');
  return {
    person,
    chance: chanceAll ?? 0,
    draft: {
      id: `give:${person.id}`,
      kind: 'give',
      name: nameOf(bench, person),
      recipient: person.id,
      luck: bench.luck,
      judged,
      makes: bench.planned,
      work: finishing(bench, bench.question.dried ? 'none' : plannedMat(bench.forecast)),
      reasons: [
        'Judged with the same ease on that body; a garment that goes to somebody else counts half.',
        ...(skipped === '' ? [] : [`Not judged, as nothing tells it of that body: ${skipped}.`]),
      ],
      bases: ['route-give-half', ...(person.id.startsWith('table:') ? ['route-body-tables'] : [])],
    },
  };
};

const openPeople = (bench: Bench): Opened => {
  const name = 'Give it to somebody whom it fits';
  if (bench.question.people.length === 0)
    return nothing('give', name, 'No other people are in the record.');
  return together(
    bench.question.people.map((person) => {
      const found = candidate(bench, person);
      return found === null
        ? nothing(
            'give',
            `Give it to ${person.name}`,
            'None of the measurements that are wanted is known of that body.',
          )
        : { drafts: [found.draft], leftOut: [] };
    }),
  );
};

/** A size of a table is offered from this chance on, one of each table at most. */
const LEAST_CHANCE = 0.1;

const openTables = (bench: Bench): Opened => {
  const name = 'Somebody of a published size';
  if (!bench.question.tables)
    return nothing('give', name, 'The published sizes were not asked for.');
  const found = BODY_TABLES.flatMap((table) => {
    const all = fromTable(table).flatMap((person) => candidate(bench, person) ?? []);
    const best = all.reduce<Candidate | null>(
      (a, b) => (a === null || b.chance > a.chance ? b : a),
      null,
    );
    return best === null || best.chance < LEAST_CHANCE ? [] : [best.draft];
  });
  return found.length === 0
    ? nothing('give', name, 'No published size has a chance of one in ten.')
    : { drafts: found, leftOut: [] };
};

const leave = (bench: Bench): Draft => ({
  id: 'leave',
  kind: 'leave',
  name:
    bench.begun > 0
      ? 'Rip it all and leave the yarn for something else'
      : 'Leave the yarn for something else',
  luck: bench.luck,
  judged: { targets: [], body: bench.own.body, unknown: [] },
  makes: null,
  work: {
    ...NO_WORK,
    stitch: bench.forecast.stitch,
    rip: knitNow(bench.pieces, bench.question.progress),
  },
  reasons: [
    'No garment comes of it.',
    ...(bench.begun > 0
      ? ['Ripped yarn is crimped until it is washed, and some of it is lost.']
      : []),
  ],
});

/** Ways in which the wearer goes without. */
export const openGiving = (bench: Bench): Opened =>
  together([openPeople(bench), openTables(bench), { drafts: [leave(bench)], leftOut: [] }]);
