import { GARMENT_KINDS, type OutlineSizes, outlineOf } from '@dryflat/engine/garment';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { RangeBar, rangeSentence } from './RangeBar.tsx';
import { Schematic, type SchematicProps } from './Schematic.tsx';

const print = (mm: number) => `${(mm / 10).toFixed(1)} cm`;
const sizes = (given: Record<string, number>) => given as OutlineSizes;

const render = (props: Partial<SchematicProps>) =>
  renderToStaticMarkup(
    <Schematic
      kind="vest"
      wanted={sizes({ chest: 480, 'body-length': 560 })}
      forecast={null}
      print={print}
      words="us"
      picked={null}
      onPick={() => {}}
      {...props}
    />,
  );

const namesIn = (html: string): string[] =>
  [...html.matchAll(/<button[^>]*><span class="df-dim-said">([^<]*)</g)].map((m) => m[1]!);

const forecast = {
  p05: sizes({ chest: 451 }),
  p50: sizes({ chest: 462 }),
  p95: sizes({ chest: 472 }),
};

describe('schematic', () => {
  it('W-D1: each dimension is a button that says what is wanted and what is forecast', () => {
    expect(namesIn(render({ forecast }))).toEqual([
      'chest, flat: wanted 48.0 cm, forecast 45.1 cm to 47.2 cm, most likely 46.2 cm',
      'body length, hem to shoulder: wanted 56.0 cm',
    ]);
  });

  it('W-D2: the picked dimension is marked for ears and for eyes', () => {
    const html = render({ picked: 'chest' });
    expect(html.match(/aria-pressed="true"/g)).toHaveLength(1);
    expect(html.match(/df-dimension-picked/g)).toHaveLength(1);
  });

  it('W-D3: wanted is dashed, forecast solid, the range a woven band; without one only the wanted', () => {
    const has = (html: string) =>
      ['wanted', 'forecast', 'band'].map((part) => html.includes(`class="df-piece-${part}"`));
    expect(has(render({ forecast }))).toEqual([true, true, true]);
    expect(has(render({}))).toEqual([true, false, false]);
    expect(render({ forecast })).toContain('fill-rule="evenodd"');
  });

  it('W-D4: no kind draws a number that is none, given nothing or everything', () => {
    for (const kind of GARMENT_KINDS) {
      const all = outlineOf(kind, {}).assumed.map((each) => [each.landmark, each.mm] as const);
      for (const wanted of [sizes({}), sizes(Object.fromEntries(all))]) {
        const html = render({ kind, wanted });
        expect(html).not.toMatch(/NaN|Infinity|undefined/);
        expect(namesIn(html)).toHaveLength(Object.keys(wanted).length);
      }
    }
  });

  it('W-D5: what was filled or could not be drawn as given is said under the drawing', () => {
    const html = render({ wanted: sizes({ chest: 480, 'cross-back': 360, 'neck-width': 470 }) });
    expect(html).toContain('Not given, so drawn at a usual proportion');
    expect(html).toContain(
      'The neck cannot be wider than the shoulders: given 47.0 cm, drawn 32.4 cm.',
    );
  });

  it('W-D6: British and American words', () => {
    const wanted = sizes({ chest: 480, 'rib-depth': 50 });
    expect(namesIn(render({ wanted, words: 'uk' }))).toContain('rib depth (welt): wanted 5.0 cm');
    expect(namesIn(render({ wanted }))).toContain('ribbing depth: wanted 5.0 cm');
  });
});

describe('range strip', () => {
  const range = { p05Mm: 451, p50Mm: 462, p95Mm: 472 };

  it('W-D7: says the range, the middle, what was wanted and how they lie', () => {
    const said = (min: number, max: number) =>
      rangeSentence({ label: 'chest', range, print, wanted: { min, max } });
    expect(said(475, 485)).toBe(
      'chest: nine times in ten 45.1 cm to 47.2 cm, most likely 46.2 cm; wanted 47.5 cm to 48.5 cm, all below what is wanted',
    );
    expect(said(440, 450)).toContain('all above what is wanted');
    expect(said(450, 480)).toContain('all within what is wanted');
    expect(said(460, 480)).toContain('partly within what is wanted');
  });

  it('W-D8: prints every number and draws a bracket only where something was wanted', () => {
    const html = (wanted: { min: number; max: number } | null) =>
      renderToStaticMarkup(<RangeBar label="chest" {...{ range, print, wanted }} />);
    for (const text of ['45.1 cm', '46.2 cm', '47.2 cm', '47.5 cm', '48.5 cm'])
      expect(html({ min: 475, max: 485 })).toContain(`>${text}<`);
    expect(html({ min: 475, max: 485 })).toContain('df-range-bracket');
    expect(html(null)).not.toContain('df-range-bracket');
    expect(html(null)).not.toMatch(/NaN|undefined/);
  });
});
