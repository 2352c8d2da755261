import type { Yarn } from '@dryflat/record';
import { MassField } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { printDay, today } from '../result/today.ts';

/** What is left of a yarn by the scale; it stands for all skeins. */
export const LeftField = ({ yarn }: { yarn: Yarn }) => {
  const { record, change } = useGarment();
  const left = record.left?.find((each) => each.yarn === yarn.id);
  const commit = (massG: number | null): void =>
    change((draft) => {
      const others = (draft.left ?? []).filter((each) => each.yarn !== yarn.id);
      const all = massG === null ? others : [...others, { yarn: yarn.id, massG, on: today() }];
      if (all.length > 0) draft.left = all;
      else delete draft.left;
    });
  return (
    <MassField
      label="Left of it now"
      path={`left/${yarn.id}/massG`}
      hint={
        left?.on
          ? `By the scale, ${printDay(left.on)}. What is not knit yet, ends and rests too.`
          : 'By the scale: what is not knit yet, ends and rests too.'
      }
      valueG={left?.massG}
      onCommit={commit}
    />
  );
};
