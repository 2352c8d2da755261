import type { SizeAtNeedle } from '@dryflat/engine/routes';
import { useMemo, useState } from 'react';
import { Card, ChoiceChips, useLandmarkName, useLengths } from '../../kit/index.ts';
import { RangeBar } from '../../schematic/index.ts';
import { useGarment } from '../../store/index.ts';
import { ChanceBar } from '../result/chance-bar.tsx';
import { chancePercent } from '../result/chance-words.ts';
import { STATE_NAMES } from '../result/state-names.ts';

const needleName = (mm: number | null): string =>
  mm === null ? 'The needle in use' : `${`${Math.round(100 * mm) / 100}`} mm`;

/** Every size begun afresh on each needle tried: what it would measure, and how it would fit. */
export const SizesByNeedle = ({
  sizes,
  judgedAt,
}: {
  sizes: readonly SizeAtNeedle[];
  judgedAt: 'dried' | 'worn' | 'rewashed';
}) => {
  const { record } = useGarment();
  const nameOf = useLandmarkName();
  const { length } = useLengths();
  const needles = useMemo(() => [...new Set(sizes.map(({ needleMm }) => needleMm))], [sizes]);
  const places = useMemo(
    () => [...new Set(sizes.flatMap((each) => each.landmarks.map(({ landmark }) => landmark)))],
    [sizes],
  );
  const [needle, setNeedle] = useState<string | null>(null);
  const [place, setPlace] = useState<string | null>(null);
  if (sizes.length === 0) return null;
  const needleNow =
    needles.find((mm) => `${mm}` === needle) ??
    needles.find((mm) => mm === (record.needleMm ?? null)) ??
    needles[0] ??
    null;
  const placeNow = places.find((each) => each === place) ?? places[0];
  const shown = sizes.filter(({ needleMm }) => needleMm === needleNow);
  return (
    <Card title="Before casting on: size and needle">
      <p className="df-soft">
        Each size begun afresh, {STATE_NAMES[judgedAt].label.toLowerCase()}. A blend takes one
        size’s stitches and the lengths of another.
      </p>
      {needles.length > 1 && (
        <ChoiceChips
          label="On"
          value={`${needleNow}`}
          onChange={setNeedle}
          choices={needles.map((mm) => ({ value: `${mm}`, label: needleName(mm) }))}
        />
      )}
      {shown[0]?.gaugeFrom === 'model' && (
        <p className="df-soft">
          Nothing was knit on this needle: its gauge is moved over from the others. Common practice,
          no source.
        </p>
      )}
      {places.length > 1 && placeNow && (
        <ChoiceChips
          label="Drawn for"
          value={placeNow}
          onChange={setPlace}
          choices={places.map((each) => ({ value: each, label: nameOf(each) }))}
        />
      )}
      <ol className="ro-sizes">
        {shown.map((each) => {
          const at = each.landmarks.find(({ landmark }) => landmark === placeNow);
          return (
            <li key={`${each.size} ${each.lengthsOf}`}>
              <div className="ro-size-head">
                <h3>
                  {each.size === each.lengthsOf
                    ? `Size ${each.size}`
                    : `Size ${each.size}, lengths of ${each.lengthsOf}`}
                </h3>
                {each.chanceAllFit !== null && (
                  <span>
                    <span className="df-unseen">All fits: </span>
                    {chancePercent(each.chanceAllFit)}
                  </span>
                )}
              </div>
              {each.chanceAllFit !== null && <ChanceBar fits={each.chanceAllFit} />}
              {at && placeNow && (
                <RangeBar
                  label={`${nameOf(placeNow)}, size ${each.size}`}
                  range={at.finishedMm}
                  {...(at.wantedMm && { wanted: at.wantedMm })}
                  print={length}
                />
              )}
            </li>
          );
        })}
      </ol>
    </Card>
  );
};
