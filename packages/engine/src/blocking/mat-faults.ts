import type { Fault } from '../units/index.ts';
import { pieceFaults } from './faults.ts';
import type { InMat, MatReading } from './mat-types.ts';
import { fault, finite, LARGEST } from './outline-faults.ts';
import type { PieceToBlock } from './types.ts';

const thingFaults = ({ outline }: PieceToBlock, { on, to, along, kind }: InMat, k: number) => {
  const field = `inMat[${k}]`;
  const faults: Fault[] = [];
  if (![on.from, on.to].every((at) => at >= 0 && at < outline.length))
    faults.push(
      fault(
        'in-mat',
        `${field}.on`,
        `${on.from} to ${on.to}`,
        'This is no part of the outline',
        `Give places from 0 to below ${outline.length}, as the step has them.`,
      ),
    );
  if (!finite(to))
    faults.push(
      fault(
        'in-mat',
        `${field}.to`,
        JSON.stringify(to),
        'This is no place in millimetres',
        'Give both coordinates in mm.',
      ),
    );
  const isRun = kind === 'comb' || kind === 'wire';
  if (isRun !== (along !== null) || (along !== null && !(Math.hypot(along.dx, along.dy) > 0)))
    faults.push(
      fault(
        'in-mat',
        `${field}.along`,
        JSON.stringify(along),
        isRun ? 'A comb or a wire has a length and a direction' : 'A pin has no direction',
        'Give it as the step has it.',
      ),
    );
  return faults;
};

/** What keeps a piece with things in it from being worked out. */
export const inMatFaults = (piece: PieceToBlock, inMat: readonly InMat[]): Fault[] => {
  const faults = pieceFaults(piece, 'piece');
  return faults.length > 0 ? faults : inMat.flatMap((thing, k) => thingFaults(piece, thing, k));
};

/** What keeps readings from being understood. */
export const readingFaults = (
  { dimensions }: PieceToBlock,
  inMat: readonly InMat[],
  readings: readonly MatReading[],
): Fault[] =>
  readings.flatMap(({ afterStep, measured }, k) => {
    const field = `readings[${k}]`;
    const within = Number.isInteger(afterStep) && afterStep >= 1 && afterStep <= inMat.length;
    const step = within
      ? []
      : [
          fault(
            'reading-step',
            `${field}.afterStep`,
            afterStep,
            `That many were never in: there are ${inMat.length}`,
            'Say how many were in when it was read.',
          ),
        ];
    const lengths = measured.flatMap(({ landmark, mm }, i) => {
      const at = `${field}.measured[${i}]`;
      if (!dimensions.some((each) => each.landmark === landmark))
        return [
          fault(
            'reading-landmark',
            `${at}.landmark`,
            landmark,
            'The piece has no such dimension',
            `Give one of: ${dimensions.map((each) => each.landmark).join(', ')}.`,
          ),
        ];
      return mm > 0 && mm <= LARGEST
        ? []
        : [fault('reading', `${at}.mm`, mm, 'This is no length', 'Give a length above 0 mm.')];
    });
    return [...step, ...lengths];
  });
