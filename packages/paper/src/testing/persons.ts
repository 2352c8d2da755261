import type { GarmentRecord } from '@dryflat/record';

/** Two whom the record knows by name, and two whom only the garment's name tells of. */
export const NAMES = ['Emlen', 'Varr', 'Quentin', 'Dray', 'Ottilie', 'Perpetua'] as const;
export const PERSONS = new RegExp(NAMES.join('|'), 'i');

/** A record with persons in every place that the knitter may write one in; sizes and all. */
export const peopled = (given: GarmentRecord): GarmentRecord => {
  const record = structuredClone(given);
  record.name = 'Present for Ottilie, by Perpetua';
  record.wearer.name = 'Emlen Varr';
  record.people = [{ id: 'q', name: 'Quentin Dray', group: 'man', body: [] }];
  record.pattern.name = `${record.pattern.name} of the Varr family`;
  record.pattern.sizes = record.pattern.sizes.map((size) => `Emlen ${size}`);
  record.pattern.chosen = `Emlen ${record.pattern.chosen}`;
  for (const each of record.pattern.measurements) each.name = `${each.name}, EMLEN’S`;
  for (const yarn of record.yarns) {
    yarn.name = `${yarn.name} from Quentin`;
    for (const lot of yarn.lots) lot.dyeLot = 'for Varr';
  }
  for (const outcome of record.outcomes) outcome.remark = 'Dray would have it too.';
  record.finished = {
    on: '2031-02-20',
    missing: { straight: 0, tPins: 0, combs: 0, wires: 0 },
    ...record.finished,
    remark: 'Dray would have it too.',
  };
  for (const photo of record.photos ?? []) photo.caption = 'Emlens Weste';
  record.report = {
    changes: 'Longer, as Emlen asked.',
    fitNotes: 'Mr VARR is pleased.',
    photos: (record.photos ?? []).map(({ id }) => id),
    body: false,
  };
  return record;
};
