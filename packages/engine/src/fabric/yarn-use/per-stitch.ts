import { type Affine, type LogNormal, meanOf, type Posterior, sdOf } from '../../stats/index.ts';
import type { Stitch } from '../../textile/index.ts';
import { ok, type Result } from '../../units/index.ts';
import { massForm, standingOf, yarnModel } from './model.ts';
import type { YarnPerStitch, YarnQuestion } from './types.ts';

/** The log-normal whose logarithm the form is. */
export const asLogNormal = (post: Posterior, form: Affine): LogNormal => ({
  median: Math.exp(meanOf(post, form)),
  logSd: sdOf(post, form),
});

/**
 * Yarn in one stitch of a pattern, mm and g, with its 1-SD doubt in logs. From weighed fabric where
 * there is any, from the loop-length relations of the gauge (stockinette), from published ratios
 * between stitches, and from the yarn's class: all that is known is combined, so more evidence never
 * widens it.
 */
export const yarnPerStitch = (question: YarnQuestion, stitch: Stitch): Result<YarnPerStitch> => {
  const model = yarnModel(question);
  if (!model.ok) return model;
  const { forms, post, bases } = model.value;
  return ok({
    stitch,
    lengthMm: asLogNormal(post, forms[stitch]),
    massG: asLogNormal(post, massForm(forms[stitch], forms.metres)),
    metresPer100g: asLogNormal(post, forms.metres),
    from: standingOf(question, stitch),
    bases,
  });
};
