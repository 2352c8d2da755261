import { useGarment } from '../store/index.ts';
import { garmentHash } from './hash.ts';

/** Says on every page of a garment that it lies on the mat, half pinned, and leads there. */
export const PinningLine = () => {
  const { record } = useGarment();
  const work = record.onMat?.findLast(({ pinned }) => pinned === undefined);
  if (work === undefined) return null;
  const { piece, copy, at, steps } = work;
  return (
    <p className="df-pinning-line">
      <a href={garmentHash(record.id, 'pinning')}>
        Pinning under way: {copy ? `${piece}, ${copy}` : piece}, step{' '}
        {Math.min(at + 1, steps.length)} of {steps.length}
      </a>
    </p>
  );
};
