import type { Forecast } from '../../garment/index.ts';
import { wholePercent } from '../../stats/index.ts';
import type { RouteFit, RoutesResult, SizeAtNeedle } from '../types.ts';

/** Everything that is said of sizes and needles about one garment, on the same seed and draws. */
export interface SaidOfSizes {
  readonly needleMm: number | null;
  readonly sizes: readonly string[];
  readonly forecast: Forecast;
  readonly result: RoutesResult;
  readonly table: readonly SizeAtNeedle[];
}

const isPure = ({ size, lengthsOf }: SizeAtNeedle): boolean => size === lengthsOf;

/** A change of needle that is not named may bring this much: what a swatch is not worth. */
const UNNAMED = 0.05;

const sizesAsTable = ({ forecast, table, needleMm }: SaidOfSizes): string[] =>
  forecast.sizes.flatMap(({ size, chanceAll }) => {
    const cell = table.find(
      (each) => isPure(each) && each.needleMm === needleMm && each.size === size,
    );
    return cell?.chanceAllFit === chanceAll
      ? []
      : [`${size}: ${chanceAll} forecast, ${cell?.chanceAllFit} in the table`];
  });

/** The best size is one that no other is shown with more than; on each needle that is named likewise. */
const bestAsTable = ({ forecast: { advice }, table, needleMm }: SaidOfSizes): string[] =>
  advice.needles.flatMap(({ way, needleMm: on, size, chanceAll }) => {
    if (way !== 'own' && needleMm === null) return [];
    const cells = table.filter((each) => isPure(each) && each.needleMm === on);
    const own = cells.find((each) => each.size === size);
    const top = Math.max(0, ...cells.map((each) => wholePercent(each.chanceAllFit ?? 0)));
    return [
      ...(own?.chanceAllFit === chanceAll
        ? []
        : [`${way} needle, ${size}: ${chanceAll} said, ${own?.chanceAllFit} in the table`]),
      ...(wholePercent(chanceAll) === top ? [] : [`${way} needle: ${size} is not the best`]),
    ];
  });

const needleAsChances = ({ forecast: { advice } }: SaidOfSizes): string[] => {
  const of = (way: string): number | null =>
    advice.needles.find((each) => each.way === way)?.chanceAll ?? null;
  const own = of('own');
  if (own === null || advice.needle === 'no-evidence') return [];
  const others = (['smaller', 'larger'] as const).map((way) => ({ way, chance: of(way) }));
  return others.flatMap(({ way, chance }) => {
    if (chance === null) return [];
    if (advice.needle === way && wholePercent(chance) < wholePercent(own))
      return [`${way} is advised and has less`];
    if (advice.needle === 'keep' && chance > own + UNNAMED)
      return [`${way} has more and is not named`];
    const silent =
      advice.needle === 'keep' &&
      wholePercent(chance) > wholePercent(own) &&
      advice.sentence.endsWith('; keep the needle.');
    return silent ? [`keep the needle, beside a table in which ${way} is shown with more`] : [];
  });
};

const routesAsTable = ({ result, table, needleMm, forecast }: SaidOfSizes): string[] =>
  result.routes.flatMap(({ id, kind, chanceAllFit }) => {
    const [, of] = id.split(/:(.*)/);
    const cell = table.find(
      (each) =>
        isPure(each) &&
        (kind === 'size'
          ? each.needleMm === needleMm && each.size === of
          : each.needleMm === Number(of) && each.size === forecast.chosenSize),
    );
    if ((kind !== 'size' && kind !== 'needle') || cell === undefined) return [];
    return cell.chanceAllFit === chanceAllFit
      ? []
      : [`${id}: ${chanceAllFit} as a route, ${cell.chanceAllFit} in the table`];
  });

const otherSide = { small: 'large', large: 'small' } as const;

/** A side is the likelier one, and no sentence names the other. */
const sidesAsFit = (fit: readonly RouteFit[], said: string, who: string): string[] =>
  fit.flatMap(({ landmark, tooSmall, tooLarge, miss: { side, byMm } }) => {
    const [here, there] = side === 'small' ? [tooSmall, tooLarge] : [tooLarge, tooSmall];
    const word = `${landmark.replaceAll('-', ' ')}, [^;.]*too ${otherSide[side]}`;
    return [
      ...(here < there || byMm < 0
        ? [`${who}: ${landmark} is likelier too ${otherSide[side]}`]
        : []),
      ...(new RegExp(`least sure is the ${word}`).test(said) ? [`${who}: “${said}”`] : []),
    ];
  });

/** What is said of sizes and needles in one place and contradicted in another; a line each. */
export const contradictedSizes = (said: SaidOfSizes): string[] => {
  const { forecast, result, sizes } = said;
  const { sentence } = forecast.advice;
  return [
    ...sizesAsTable(said),
    ...bestAsTable(said),
    ...needleAsChances(said),
    ...routesAsTable(said),
    ...result.routes.flatMap(({ id, fit, reasons }) => sidesAsFit(fit, reasons[0] ?? '', id)),
    ...(sizes.length === 1 && /fits best|\bsize\b(?! (larger|smaller))/i.test(sentence)
      ? [`of one size: “${sentence}”`]
      : []),
  ];
};
