import { type Fibre, type Treatment, type WeightClass, yarnWeight } from '@dryflat/engine/textile';
import type { GarmentRecord } from '@dryflat/record';

type Words = 'us' | 'uk';

/** Fibres as labels name them; those whose name is not simply their own. */
const FIBRE_NAMES: Partial<Readonly<Record<Fibre, readonly [string, string]>>> = {
  linen: ['Linen (flax)', 'Linen (flax)'],
  viscose: ['Rayon (viscose)', 'Viscose (rayon)'],
  lyocell: ['Lyocell', 'Lyocell'],
  nylon: ['Nylon (polyamide)', 'Nylon (polyamide)'],
  other: ['Another fiber', 'Another fibre'],
};

export const fibreName = (fibre: Fibre, words: Words): string =>
  FIBRE_NAMES[fibre]?.[words === 'us' ? 0 : 1] ??
  `${fibre.charAt(0).toUpperCase()}${fibre.slice(1)}`;

export const TREATMENT_CHOICES: readonly { value: Treatment; label: string; note: string }[] = [
  { value: 'untreated', label: 'No', note: 'Wool to be washed by hand, or nothing that felts.' },
  {
    value: 'superwash',
    label: 'Yes, machine-washable wool',
    note: 'Labels call it superwash.',
  },
  { value: 'unknown', label: 'Not known', note: 'The forecast then allows for both.' },
];

/** `3, light, DK`: the number of the class with its names. */
export const weightName = (weightClass: WeightClass): string =>
  `${weightClass}: ${yarnWeight(weightClass).names.join(', ')}`;

export const WASHING_CHOICES: readonly {
  value: GarmentRecord['plan']['washing'];
  label: string;
}[] = [
  { value: 'by-hand', label: 'By hand' },
  { value: 'machine-wool', label: 'Machine, wool cycle' },
  { value: 'machine-warm', label: 'Machine, warm' },
  { value: 'not-said', label: 'Not decided' },
];
