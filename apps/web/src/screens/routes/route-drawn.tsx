import type { Route } from '@dryflat/engine/routes';
import { forecastSizes, wantedSizes } from '@dryflat/paper/schematic';
import { useMemo, useState } from 'react';
import { useLengths } from '../../kit/index.ts';
import { Schematic } from '../../schematic/index.ts';
import { useGarment, useView } from '../../store/index.ts';
import { useForecast } from '../../worker/index.ts';
import { STATE_NAMES } from '../result/state-names.ts';

/** The garment as the route would make it, over what is wanted. */
export const RouteDrawn = ({
  route,
  judgedAt,
}: {
  route: Route;
  judgedAt: 'dried' | 'worn' | 'rewashed';
}) => {
  const { record } = useGarment();
  const { words } = useView();
  const { length } = useLengths();
  const { forecast } = useForecast();
  const [picked, setPicked] = useState<string | null>(null);
  const sizes = useMemo(() => forecastSizes(route, judgedAt), [route, judgedAt]);
  const wanted = useMemo(() => (forecast ? wantedSizes(forecast) : sizes.p50), [forecast, sizes]);
  return (
    <section aria-label="Drawn">
      <h3>As it would be, {STATE_NAMES[judgedAt].label.toLowerCase()}</h3>
      <Schematic
        kind={record.kind}
        wanted={wanted}
        forecast={sizes}
        print={length}
        words={words}
        picked={picked}
        onPick={setPicked}
      />
    </section>
  );
};
