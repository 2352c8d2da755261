import { pinsIn, pinTotal, pinWords } from '@dryflat/record';
import { Button, Card, Icon, Notice, useLandmarkName, useLengths } from '../../kit/index.ts';
import { garmentHash } from '../../shell/hash.ts';
import { useGarment } from '../../store/index.ts';
import { PhotoSection } from '../photos/index.tsx';
import { goBack, goTo, leftOut } from './progress.ts';
import type { WorkAtHand } from './use-work.ts';
import { workName } from './work-name.ts';

/** The last pin is in: what went in, what it comes to, what to mind, and the way on. */
export const Summary = ({ work, act, readOnly }: WorkAtHand) => {
  const { record } = useGarment();
  const { length, range } = useLengths();
  const name = useLandmarkName();
  const counts = pinsIn(work);
  const out = leftOut(work);
  const open = work.steps.findIndex(({ done }) => done === undefined);
  return (
    <div className="df-page">
      <Card title={open < 0 ? `${workName(work)} is pinned` : `${workName(work)}: not all is in`}>
        {work.pinned && (
          <p>
            Since <time dateTime={work.pinned}>{momentWords(work.pinned)}</time>.
          </p>
        )}
        <h3>In the mat</h3>
        <ul className="df-summary-counts" aria-label="Pins in the mat, kind by kind">
          {pinWords(counts)
            .split(', ')
            .map((kind) => (
              <li key={kind}>{kind}</li>
            ))}
        </ul>
        <p>
          <strong>{pinTotal(counts)} in all</strong>; as many have to come out again.
        </p>
        {open >= 0 && (
          <Button onPress={() => act((mine, now) => goTo(mine, open, now))}>
            Go to step {open + 1}, which is open
          </Button>
        )}
        {out.length > 0 && (
          <>
            <p>{out.length === 1 ? 'One step is' : `${out.length} steps are`} left out.</p>
            <div className="df-row">
              {out.map((at) => (
                <Button key={at} onPress={() => act((mine, now) => goTo(mine, at, now))}>
                  Step {at + 1}
                </Button>
              ))}
            </div>
          </>
        )}
      </Card>
      {work.lies && work.lies.reaches.length > 0 && (
        <Card title="What it will measure">
          <dl className="df-summary-measures">
            {work.lies.reaches.map(({ landmark, targetMm, pinnedMm, dryLowMm, dryHighMm }) => (
              <div key={landmark}>
                <dt>{name(landmark)}</dt>
                <dd>
                  <strong>{range(dryLowMm, dryHighMm)}</strong> dry{' '}
                  <span className="df-soft">
                    (pinned {length(pinnedMm)}, wanted {length(targetMm)})
                  </span>
                </dd>
              </div>
            ))}
          </dl>
          <p className="df-soft">Dry and unpinned, nine times in ten within these.</p>
        </Card>
      )}
      <Notice tone="unsure">
        Pins and wires are sharp: keep children and pets out of the room. Count them out again when
        it is dry, and feel for forgotten ones before anybody wears it.
      </Notice>
      <PhotoSection when="pinned" />
      <div className="df-row">
        {open < 0 && (
          <a className="df-button" data-look="main" href={garmentHash(record.id, 'dry')}>
            <Icon name="onward" />
            Dry
          </a>
        )}
        <Button isDisabled={readOnly && work.at === 0} onPress={() => act(goBack)}>
          Back to the last step
        </Button>
        <a className="df-button" data-look="quiet" href={garmentHash(record.id, 'mat')}>
          Another piece
        </a>
      </div>
    </div>
  );
};

const momentWords = (moment: string): string =>
  new Date(moment).toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' });
