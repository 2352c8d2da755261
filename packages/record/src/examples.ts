import cardigan from '../../../examples/child-cardigan.json' with { type: 'json' };
import socks from '../../../examples/ferry-socks.json' with { type: 'json' };
import hayloft from '../../../examples/hayloft-pullover.json' with { type: 'json' };
import shawl from '../../../examples/lace-shawl.json' with { type: 'json' };
import linen from '../../../examples/linen-top.json' with { type: 'json' };
import waistcoat from '../../../examples/waistcoat.json' with { type: 'json' };
import yoke from '../../../examples/yoke-pullover.json' with { type: 'json' };
import type { GarmentRecord } from './schema/index.ts';

/** A garment of the invented Quillbeck valley, whose knitters meet over the wool store. */
export interface Example {
  /** Name of its file without the ending: `waistcoat`. */
  readonly slug: string;
  readonly title: string;
  /** What happened, one line. */
  readonly story: string;
  /** The record itself; shared, so copy it (`duplicateRecord`) before changing anything. */
  readonly record: GarmentRecord;
}

/** The files are checked against the schema by a test, so that a page need not parse them again. */
const example = (slug: string, file: unknown, story: string): Example => {
  const record = file as GarmentRecord;
  return { slug, title: record.name, story, record };
};

/** Every example, in the order in which they are offered. */
export const EXAMPLES: readonly Example[] = [
  example(
    'waistcoat',
    waistcoat,
    'Machine-washable merino, never swatched: the back is done and a hand too narrow, and the supper is in six weeks.',
  ),
  example(
    'yoke-pullover',
    yoke,
    'Woollen-spun and yoked, with a swatch counted in several places before and after its bath.',
  ),
  example(
    'child-cardigan',
    cardigan,
    'Cotton for a boy who will not be measured, and a gauge read while someone pulled at it.',
  ),
  example(
    'lace-shawl',
    shawl,
    'A shawl to be pinned hard for a window of known width; the swatch says how much of the stretch stays.',
  ),
  example(
    'linen-top',
    linen,
    'Linen that grows by hanging: a weight on the swatch tells how far, and a day of wear is what counts.',
  ),
  example(
    'hayloft-pullover',
    hayloft,
    'Two forecasts kept from before, and what the pullover measured over six washes.',
  ),
  example(
    'ferry-socks',
    socks,
    "Last winter's pair is the evidence for this one: same hand, same needles, same yarn.",
  ),
];

/** The example of a slug, or undefined. */
export const findExample = (slug: string): Example | undefined =>
  EXAMPLES.find((each) => each.slug === slug);
