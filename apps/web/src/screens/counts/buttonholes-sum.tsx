import { buttonholes, buttonNotice, type Pitch, writeBand } from '@dryflat/engine/counts';
import { Notice, useLengths } from '../../kit/index.ts';
import { useGarment, useView } from '../../store/index.ts';
import { AsideCount } from './aside-field.tsx';
import { SumAnswer } from './sum-answer.tsx';
import { useAsideNumber } from './use-aside.ts';

/** Buttonholes spread over a band that is knit along its length. */
export const ButtonholesSum = ({ pitch }: { pitch: Pitch }) => {
  const { length } = useLengths();
  const { words } = useView();
  const { record } = useGarment();
  const [total] = useAsideNumber('holes/total');
  const [holes] = useAsideNumber('holes/holes');
  const [size] = useAsideNumber('holes/size');
  const [start] = useAsideNumber('holes/start');
  const [end] = useAsideNumber('holes/end');
  const ready = total !== null && holes !== null && size !== null;
  const result = ready
    ? buttonholes({
        total,
        holes,
        size,
        margin: { start: start ?? 0, end: end ?? 0 },
        pitchMm: pitch.stitch,
      })
    : null;
  const caution = buttonNotice(record.wearer.group);
  return (
    <div className="df-stack">
      {caution && <Notice tone="unsure">{caution.text}</Notice>}
      <div className="df-three">
        <AsideCount name="holes/total" label="Stitches of the band" />
        <AsideCount name="holes/holes" label="Buttonholes" />
        <AsideCount name="holes/size" label="Stitches of each" />
        <AsideCount name="holes/start" label="Stitches before the first" />
        <AsideCount name="holes/end" label="Stitches after the last" />
      </div>
      <SumAnswer result={result}>
        {(found) => (
          <>
            <p className="df-lead">{writeBand(found, size!, words)}</p>
            <p>
              Middles from the start of the band: {found.centresMm.map(length).join(', ')}.
              {found.idealMm !== null && ` Ideally ${length(found.idealMm)} apart;`}
              {found.idealMm !== null && ` the worst is off by ${length(found.worstErrorMm)}.`}
            </p>
          </>
        )}
      </SumAnswer>
    </div>
  );
};
