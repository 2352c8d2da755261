import { outlineOf } from '@dryflat/engine/garment';
import type { Result } from '@dryflat/engine/units';
import { useMemo } from 'react';
import { Card, ParsedField, SectionFaults } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { pieceWord } from '../mat/mat-words.ts';
import { assumedOf } from '../result/assumed.ts';
import { today } from '../result/today.ts';

const PERCENT = /^(\d{1,3}(?:[.,]\d)?)\s*%?$/;

/** A share of a piece that is knit: 0 to 100 percent. */
const parseShare = (given: string, field: string): Result<number> => {
  const value = Number((PERCENT.exec(given.trim())?.[1] ?? 'NaN').replace(',', '.'));
  if (value >= 0 && value <= 100) return { ok: true, value: value / 100 };
  return {
    ok: false,
    faults: [
      {
        code: 'share-unreadable',
        field,
        given,
        problem: 'this is not a share in percent',
        mend: 'Type a number from 0 to 100: 50 is half of it.',
      },
    ],
  };
};

/** How much of each piece is on the needles or done. */
export const ProgressCard = () => {
  const { record, change } = useGarment();
  const pieces = useMemo(() => outlineOf(record.kind, {}).pieces, [record.kind]);
  return (
    <Card title="How much is knit">
      {assumedOf(record, 'progress').map((each) => (
        <p key={each} className="df-soft">
          {each}
        </p>
      ))}
      <div className="df-three">
        {pieces.map(({ name, copies }) => (
          <ParsedField<number>
            key={name}
            label={copies === 2 ? `${pieceWord(name)}, both together` : pieceWord(name)}
            path={`progress/${name}`}
            unit={{ sign: '%', spoken: 'in percent' }}
            value={record.progress?.find((each) => each.piece === name)?.share ?? null}
            print={(share) => `${Math.round(1000 * share) / 10}`}
            parse={(text) => parseShare(text, pieceWord(name))}
            onCommit={(share) =>
              change((draft) => {
                const others = (draft.progress ?? []).filter(({ piece }) => piece !== name);
                const all =
                  share === null ? others : [...others, { piece: name, share, on: today() }];
                if (all.length > 0) draft.progress = all;
                else delete draft.progress;
              })
            }
          />
        ))}
      </div>
      <SectionFaults prefix="progress" />
    </Card>
  );
};
