import type { Fault } from '../units/index.ts';
import { SCALE_SD } from './assumptions.ts';
import { between, dryFault as fault } from './dry-fault.ts';
import { imaginer, UNKNOWNS } from './imagined.ts';
import type { DryingQuestion, Weighing } from './types.ts';

/** Times the dry mass that no fabric holds even when it drips. */
const MOST_WATER = 8;
/** A mass that was not weighed in this room is off by up to this share for its regain. */
const OTHER_AIR = 0.05;
/** A weighing below this share of the dry mass has lost a piece, or the dry mass is wrong. */
const LOST = 0.9;

interface Bounds {
  readonly least: number;
  readonly most: number;
  readonly dryMass: string;
}

const wetFaults = ({ wet }: DryingQuestion, { dryMass }: Bounds, least: number, most: number) => {
  if (typeof wet !== 'number') return [];
  if (!(wet >= least))
    return [
      fault(
        'below-dry',
        'wet',
        `${wet} g`,
        `after pressing it is lighter than dry in this room, about ${dryMass}`,
        'Weigh both again, with all pieces and without the towel.',
      ),
    ];
  if (wet <= most) return [];
  return [
    fault(
      'too-wet',
      'wet',
      `${wet} g`,
      `no fabric holds this much water; dry it is about ${dryMass}`,
      'Check both masses and their units.',
    ),
  ];
};

/** Hours; longer ago than two months is another wash. */
const LONGEST = 24 * 60;

const weighingFaults = ({ hours, mass }: Weighing, field: string, bounds: Bounds): Fault[] => {
  const faults: Fault[] = [];
  if (!between(hours, 0, LONGEST))
    faults.push(
      fault(
        'hours',
        `${field}.hours`,
        hours,
        'a weighing is not within two months after pressing',
        'Give hours since pressing.',
      ),
    );
  if (!(mass <= bounds.most))
    faults.push(
      fault(
        'gained',
        `${field}.mass`,
        `${mass} g`,
        'it is heavier than after pressing',
        'Weigh it again; if it was wetted anew, begin anew.',
      ),
    );
  if (!(mass >= bounds.least) && mass <= bounds.most)
    faults.push(
      fault(
        'lost',
        `${field}.mass`,
        `${mass} g`,
        `it is far lighter than dry in this room, about ${bounds.dryMass}`,
        'Weigh it again with all its pieces, or correct the dry mass.',
      ),
    );
  return faults;
};

/** SDs of the scale that a mass may be off by without being called impossible. */
const SLACK = 3;

/** Masses against the one that it comes to in this room; only of a question that is sound so far. */
export const massesFaults = (question: DryingQuestion): readonly Fault[] => {
  const { wet, dry, weighings, scaleSd = SCALE_SD } = question;
  const middle = imaginer(question)(new Float64Array(UNKNOWNS.length)).dryMassG;
  const slack = SLACK * scaleSd + (dry.air === 'here' ? 0 : OTHER_AIR * dry.mass);
  const wettest = MOST_WATER * middle;
  const bounds: Bounds = {
    least: LOST * middle - slack,
    most: typeof wet === 'number' ? wet + slack : wettest,
    dryMass: `${middle.toFixed(0)} g`,
  };
  const wrong = wetFaults(question, bounds, middle - slack, wettest);
  if (wrong.length > 0) return wrong;
  return weighings.flatMap((each, i) => weighingFaults(each, `weighings[${i}]`, bounds));
};
