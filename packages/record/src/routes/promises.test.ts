import { outlineOf } from '@dryflat/engine/garment';
import { type RoutesQuestion, routes } from '@dryflat/engine/routes';
import { promisesBroken } from '@dryflat/engine/routes/check';
import { explain } from '@dryflat/engine/units';
import { describe, expect, it } from 'vitest';
import { EXAMPLES } from '../examples.ts';
import type { GarmentRecord } from '../schema/index.ts';
import { askRoutes } from './index.ts';

const TODAY = '2031-01-20';

const asked = (record: GarmentRecord, progress?: RoutesQuestion['progress']) => {
  const question = askRoutes(record, TODAY);
  if (!question.ok) throw new Error(question.faults.map(explain).join('\n'));
  const so = progress === undefined ? question.value : { ...question.value, progress };
  const found = routes(so, { draws: 200 });
  if (!found.ok) throw new Error(found.faults.map(explain).join('\n'));
  return { question: so, result: found.value };
};

const waistcoat = () => {
  const found = EXAMPLES.find(({ slug }) => slug === 'waistcoat');
  return asked(found?.record ?? expect.fail('no example'));
};

describe('what routes of the examples say is what they give', () => {
  it.each(EXAMPLES.map(({ slug, record }) => [slug, record] as const))(
    'O24: %s, as it is, half knit and all knit',
    (_, record) => {
      const { pieces } = outlineOf(record.kind, {});
      for (const share of [undefined, 0.5, 1]) {
        const progress =
          share === undefined ? share : pieces.map(({ name }) => ({ piece: name, share }));
        const { question, result } = asked(record, progress);
        expect(promisesBroken(question, result)).toEqual([]);
      }
    },
  );

  it('O24: the armhole of the waistcoat that is ripped and knit again is as deep as is wanted', () => {
    const { result } = waistcoat();
    const route = result.routes.find(({ id }) => id === 'rip-length:body');
    const back = route?.knitting?.pieces.find(({ piece }) => piece === 'back');
    const [under, top] = ['underarm', 'shoulder'].map((to) =>
      back?.stretches.find((each) => each.to === to),
    );
    expect(back?.ripTo?.row).toBe(under?.rows);
    const armhole = route?.fit.find(({ landmark }) => landmark === 'armhole-depth');
    expect(armhole?.wantedMm).toEqual({ min: 245, max: 280 });
    const row =
      (route?.measurements.find(({ landmark }) => landmark === 'armhole-depth')?.states.asKnit
        .p50Mm ?? 0) / (top?.rows ?? 1);
    // The back was read at 87 rows in 268 mm and 32.5 rows in 100 mm.
    expect(row).toBeGreaterThan(3.0);
    expect(row).toBeLessThan(3.15);
    expect(armhole!.finishedMm.p50Mm).toBeGreaterThan(245);
    expect(armhole!.finishedMm.p50Mm).toBeLessThan(280);
  });
});
