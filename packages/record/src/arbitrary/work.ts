import fc from 'fast-check';
import type {
  Instruction,
  Pace,
  PaceEntry,
  Person,
  Photo,
  Progress,
  ReportChoices,
  YarnLeft,
} from '../schema/index.ts';
import {
  between,
  bodyMeasure,
  day,
  id,
  label,
  list,
  partial,
  positive,
  share,
  whole,
} from './parts.ts';

const paceEntry = partial<PaceEntry>(
  {
    id,
    on: day,
    minutes: between(0.01, 10_000),
    stitches: positive,
    fabric: fc.constantFrom('plain', 'worked'),
  },
  ['id', 'minutes', 'stitches', 'fabric'],
);

export const pace = partial<Pace>(
  {
    log: list(paceEntry),
    hours: fc.array(between(0, 24), { minLength: 7, maxLength: 7 }),
    away: list(day),
    from: day,
    shopDays: whole(0, 1000),
  },
  ['log', 'hours', 'away'],
);

export const progress = partial<Progress>({ piece: label, share, on: day }, ['piece', 'share']);

export const yarnLeft = partial<YarnLeft>({ yarn: id, massG: between(0, 99_999), on: day }, [
  'yarn',
  'massG',
]);

export const instruction: fc.Arbitrary<Instruction> = fc.record({ id, piece: label, text: label });

export const person: fc.Arbitrary<Person> = fc.record({
  id,
  name: label,
  group: fc.constantFrom('woman' as const, 'man' as const, 'child' as const, 'baby' as const),
  body: list(bodyMeasure),
});

export const photo = partial<Photo>(
  {
    id,
    when: fc.constantFrom('before', 'pinned', 'dried', 'other'),
    on: day,
    caption: label,
    type: fc.constantFrom('image/jpeg', 'image/webp', 'image/png'),
    widthPx: whole(1, 10_000),
    heightPx: whole(1, 10_000),
    data: fc.base64String({ maxLength: 40 }),
  },
  ['id', 'when', 'caption', 'type', 'widthPx', 'heightPx', 'data'],
);

export const report = partial<ReportChoices>(
  {
    changes: label,
    fitNotes: label,
    photos: list(id),
    body: fc.boolean(),
    usedG: positive,
    hours: positive,
  },
  ['changes', 'fitNotes', 'photos', 'body'],
);
