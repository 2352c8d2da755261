import type { WantedFit } from '@dryflat/record';
import { useLengths } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { useForecast } from '../../worker/index.ts';
import { mayGoAroundAt } from './may-go-around.ts';
import { bodyMmAt } from './wanted-places.ts';

interface Bar {
  readonly bodyMm: number | null;
  readonly minMm: number;
  readonly maxMm: number;
  readonly forecast: {
    readonly p05Mm: number;
    readonly p50Mm: number;
    readonly p95Mm: number;
  } | null;
}

/** The body, the finished range that is wanted, and what the forecast expects, on one scale. */
export const FitPicture = ({ landmark, wish }: { landmark: string; wish: WantedFit }) => {
  const { record } = useGarment();
  const { forecast } = useForecast();
  const { bare, length, range } = useLengths();
  const body = bodyMmAt(record, landmark);
  const bar = barOf(wish, body, mayGoAroundAt(record, landmark));
  if (bar === null || wish.minMm > wish.maxMm) return null;
  const expected = forecast?.fit.find((each) => each.landmark === landmark)?.finishedMm ?? null;
  return (
    <figure className="we-picture">
      <Scale bar={{ ...bar, forecast: expected }} />
      <figcaption>
        {body !== null && (
          <span>
            <i data-key="body" /> Body {length(body)}
          </span>
        )}
        <span>
          <i data-key="wanted" /> Wanted {bare(bar.minMm)}–{length(bar.maxMm)}
        </span>
        {expected && (
          <span>
            <i data-key="forecast" /> Forecast {range(expected.p05Mm, expected.p95Mm)}
          </span>
        )}
      </figcaption>
    </figure>
  );
};

/** Finished lengths, around where it goes around; null for ease over a body that is not known. */
const barOf = (
  wish: WantedFit,
  bodyMm: number | null,
  girth: boolean,
): Omit<Bar, 'forecast'> | null => {
  if (wish.kind === 'ease')
    return bodyMm === null
      ? null
      : { bodyMm, minMm: bodyMm + wish.minMm, maxMm: bodyMm + wish.maxMm };
  const times = girth && wish.span === 'flat' ? 2 : 1;
  return { bodyMm, minMm: wish.minMm * times, maxMm: wish.maxMm * times };
};

const WIDTH = 320;

const Scale = ({ bar: { bodyMm, minMm, maxMm, forecast } }: { bar: Bar }) => {
  const all = [minMm, maxMm, bodyMm, forecast?.p05Mm, forecast?.p95Mm].filter((v) => v != null);
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const room = Math.max((high - low) * 0.08, 1);
  const x = (value: number): number => ((value - low + room) / (high - low + 2 * room)) * WIDTH;
  return (
    <svg viewBox={`0 0 ${WIDTH} 44`} aria-hidden="true" preserveAspectRatio="none">
      <line className="we-scale" x1={0} x2={WIDTH} y1={22} y2={22} />
      <rect
        className="we-wanted"
        x={x(minMm)}
        width={Math.max(x(maxMm) - x(minMm), 2)}
        y={8}
        height={28}
        rx={4}
      />
      {forecast && (
        <>
          <line
            className="we-forecast"
            x1={x(forecast.p05Mm)}
            x2={x(forecast.p95Mm)}
            y1={22}
            y2={22}
          />
          <line
            className="we-forecast"
            x1={x(forecast.p50Mm)}
            x2={x(forecast.p50Mm)}
            y1={15}
            y2={29}
          />
        </>
      )}
      {bodyMm !== null && (
        <line className="we-body-mark" x1={x(bodyMm)} x2={x(bodyMm)} y1={2} y2={42} />
      )}
    </svg>
  );
};
