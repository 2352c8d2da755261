import type { Fibre } from '../textile/index.ts';
import type { ForecastQuestion, Notice } from './forecast-types.ts';

/** Hair whose scales felt, unless it was treated against it. */
const FELTS: ReadonlySet<Fibre> = new Set(['wool', 'alpaca', 'mohair', 'cashmere']);
/** Hair and silk are protein, which moths eat and light breaks down. */
const PROTEIN: ReadonlySet<Fibre> = new Set([...FELTS, 'silk']);
const SET_BY_HEAT: ReadonlySet<Fibre> = new Set(['acrylic', 'nylon', 'polyester']);
const WEAK_WET: ReadonlySet<Fibre> = new Set(['viscose', 'silk']);
const DRIES_SLOWLY: ReadonlySet<Fibre> = new Set(['cotton', 'linen', 'hemp', 'viscose', 'lyocell']);

const NAMES: Readonly<Partial<Record<Fibre, string>>> = { other: 'a fibre that is not named' };

/** `wool and silk`; the fibers of a yarn that are in a group, as it names them. */
const listed = (fibres: readonly Fibre[]): string => {
  const names = fibres.map((fibre) => NAMES[fibre] ?? fibre);
  return names.length < 2
    ? (names[0] ?? '')
    : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
};

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/**
 * What can hurt the garment or somebody, for this yarn and this way of finishing it, most urgent first.
 * Common practice, no source.
 */
export const cautionsOf = ({
  fibres,
  treatment,
  stitch,
  yarns = 1,
  drying,
  washing,
}: ForecastQuestion): Notice[] => {
  const of = (group: ReadonlySet<Fibre>): Fibre[] =>
    fibres.flatMap(({ fibre, share }) => (share > 0 && group.has(fibre) ? [fibre] : []));
  const felts = of(FELTS).filter((fibre) => fibre !== 'wool' || treatment !== 'superwash');
  const [melts, weak, protein, slow] = [SET_BY_HEAT, WEAK_WET, PROTEIN, DRIES_SLOWLY].map(of);
  const say = (is: boolean, code: string, text: string): Notice[] =>
    is ? [{ code: `caution-${code}`, text }] : [];
  return [
    ...say(
      drying === 'pin',
      'pins',
      'Pins are sharp: count them in and out, keep children and pets away, and feel the piece over by hand before anyone wears it. Pins and wires that rust leave stains for good.',
    ),
    ...say(
      felts.length > 0,
      'felting',
      `${capital(listed(felts))} felts with warmth, rubbing and sudden changes of temperature, and nothing undoes it${washing === 'machine-warm' ? ': a warm machine wash is all three' : ''}.`,
    ),
    ...say(
      weak!.length > 0,
      'weak-wet',
      `${capital(listed(weak!))} is weak while wet: lift it with both hands, and neither wring nor hang it.`,
    ),
    ...say(
      stitch === 'colourwork' || yarns > 1,
      'bleeding',
      'Colors may bleed: press a damp white cloth on each before different colors meet in water.',
    ),
    ...say(
      melts!.length > 0,
      'heat',
      `Steam or an iron ruins ${listed(melts!)} for good, and both burn skin.`,
    ),
    ...say(
      true,
      'sun',
      'Dry it out of direct sun and away from hot radiators: they fade and harden it.',
    ),
    ...say(
      slow!.length > 0,
      'mold',
      `${capital(listed(slow!))} dries slowly: turn it and let air move over it, or it grows mold.`,
    ),
    ...say(
      protein!.length > 0,
      'moths',
      `Moths eat ${listed(protein!)}: put it away clean, quite dry and closed up.`,
    ),
  ];
};
