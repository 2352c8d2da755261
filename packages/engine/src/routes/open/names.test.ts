import { describe, expect, it } from 'vitest';
import { mm } from '../../units/index.ts';
import { QUESTION } from '../check/questions.ts';
import { routes } from '../routes.ts';
import type { Route, RoutesQuestion } from '../types.ts';

const found = (change: Partial<RoutesQuestion>): readonly Route[] => {
  const result = routes({ ...QUESTION, ...change }, { draws: 400 });
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value.routes;
};

const length = (landmark: string, each: number) => ({
  ...QUESTION.forecast.measurements.find((m) => m.landmark === 'body-length')!,
  id: landmark,
  name: landmark,
  landmark,
  values: QUESTION.forecast.sizes.map(() => mm(each)),
});

const shorter = (more: readonly ReturnType<typeof length>[]): RoutesQuestion['forecast'] => ({
  ...QUESTION.forecast,
  measurements: [...QUESTION.forecast.measurements, ...more],
  wanted: QUESTION.forecast.wanted.map((each) =>
    each.landmark === 'body-length' ? { ...each, min: mm(540), max: mm(560) } : each,
  ),
});

/** Wanted to be much shorter than it is planned. */
const SHORTER = shorter([length('underarm-length', 380), length('rib-depth', 60)]);

const rows = (route: Route | undefined): string[] => (route?.counts ?? []).map(({ what }) => what);

describe('Names and work of routes', () => {
  it('O14: nothing is ripped of what is not begun, and no row says so', () => {
    const of = (progress: RoutesQuestion['progress']) =>
      found({ forecast: SHORTER, progress }).find(({ id }) => id === 'rip-length:body');
    const fresh = of([]);
    expect(fresh?.name).toMatch(/^Knit the body with \d+ rows fewer/);
    expect(rows(fresh)).not.toContain('row to rip down to');
    expect(fresh?.hours.rip.p95).toBe(0);
    const done = of([{ piece: 'back', share: 1 }]);
    expect(done?.name).toMatch(/^Rip the back down to row \d+ and begin the armholes there/);
    expect(rows(done)).toContain('row to rip down to');
    expect(done?.hours.rip.p50).toBeGreaterThan(0);
  });

  it('O14: rows that are taken out above the ribbing cost the ribbing again', () => {
    const knit = (route: Route | undefined) => route?.hours.knit.p50 ?? Number.NaN;
    const extra = (forecast: RoutesQuestion['forecast']) => {
      const all = found({ forecast });
      const out = all.find(({ id }) => id === 'take-away:hem');
      return { name: out?.name, hours: knit(out) - knit(all.find(({ planned }) => planned)) };
    };
    const ribbed = extra(SHORTER);
    expect(ribbed.name).toContain('knit the ribbing on again');
    // 6 cm of about 210 stitches around at 1500 an hour: 17 rows, about 2.4 hours; a quarter for the gauge.
    expect(ribbed.hours).toBeGreaterThan(1.8);
    expect(ribbed.hours).toBeLessThan(3);
    const plain = extra(shorter([]));
    expect(plain.name).toContain('bound off downwards');
    expect(plain.hours).toBeCloseTo(0, 9);
  });

  it('O24: the row to rip to is the new place of the underarm; what is above it stays what is wanted', () => {
    const all = found({ forecast: SHORTER, progress: [{ piece: 'back', share: 1 }] });
    const route = all.find(({ id }) => id === 'rip-length:body');
    const planned = all.find(({ planned: is }) => is);
    const knit = (of: Route | undefined, landmark: string) =>
      of?.measurements.find((each) => each.landmark === landmark)?.states.asKnit.p50Mm ?? 0;
    const back = route?.knitting?.pieces.find(({ piece }) => piece === 'back');
    const under = back?.stretches.find(({ to }) => to === 'underarm');
    expect(under?.by).toBeLessThan(-5);
    // It lies that much lower: the row to which it is ripped is the row where the armholes begin.
    expect(back?.ripTo?.row).toBe(under?.rows);
    expect(route?.name).toContain(`down to row ${under?.rows} `);
    expect(knit(route, 'armhole-depth')).toBeCloseTo(knit(planned, 'armhole-depth'), 9);
    const shorter = knit(planned, 'body-length') - knit(route, 'body-length');
    // Rows of about 3.6 mm; rounded to whole ones from the cast-on, half of one is lost or won.
    expect(shorter / -under!.by).toBeGreaterThan(3.3);
    expect(shorter / -under!.by).toBeLessThan(3.9);
  });

  it('O24: each step says of which piece, and from where its rows are counted', () => {
    const all = found({ forecast: SHORTER, progress: QUESTION.progress });
    const ripped = all.filter(({ knitting }) => (knitting?.pieces.length ?? 0) > 0);
    expect(ripped.length).toBeGreaterThan(3);
    for (const { knitting, steps } of ripped) {
      const said = steps.join(' ');
      for (const { piece, ripTo, stretches } of knitting!.pieces) {
        expect(said.toLowerCase()).toContain(piece);
        if (ripTo !== null && ripTo.row! > 0)
          expect(said).toContain(`row ${ripTo.row} from the cast-on`);
        for (const { rows: count, by } of stretches)
          if (by !== 0) expect(said).toMatch(new RegExp(`\\b${count}\\b`));
      }
    }
  });

  it('O22: where one half of the body is not begun, it may make up for the other', () => {
    const all = found({ progress: [{ piece: 'back', share: 1 }] });
    const route = all.find(({ id }) => id === 'add:front' || id === 'take-away:front');
    const planned = all.find(({ planned: is }) => is);
    const chest = (of: Route | undefined) =>
      of?.measurements.find(({ landmark }) => landmark === 'chest')?.states.asKnit.p50Mm ?? 0;
    const stitches = route?.counts[0]?.count ?? Number.NaN;
    const by = chest(route) - chest(planned);
    expect(stitches % 2).toBe(0);
    // A stitch of about 4.9 mm by the swatch of 20.5 over 10 cm; a tenth for what else is known.
    expect(Math.abs(by) / stitches).toBeGreaterThan(0.9 * 4.88);
    expect(Math.abs(by) / stitches).toBeLessThan(1.1 * 4.88);
    expect(route?.hours.rip.p95).toBe(0);
    const more = (route?.hours.knit.p50 ?? 0) - (planned?.hours.knit.p50 ?? 0);
    expect(Math.sign(more)).toBe(Math.sign(by));
    for (const progress of [[], QUESTION.progress])
      expect(found({ progress }).some(({ id }) => /:front$/.test(id))).toBe(false);
  });

  it('O22: a half that is knit and too long is ripped to its underarm, and no farther', () => {
    const all = found({ forecast: SHORTER, progress: [{ piece: 'back', share: 1 }] });
    const route = all.find(({ id }) => /:front:length$/.test(id));
    const ripped = (id: string) => all.find((each) => each.id === id)?.hours.rip.p50 ?? Number.NaN;
    expect(route?.name).toMatch(
      /^Rip the back down to row \d+ and begin the armholes there, \d+ rows lower; knit the front so too, \d+ stitches/,
    );
    expect(route?.hours.rip.p50).toBeCloseTo(ripped('rip-length:body'), 9);
    expect(route?.hours.rip.p50).toBeLessThan(ripped('blend:own'));
  });
});
