import type { Forecast } from '@dryflat/engine/garment';
import { Disclosure } from '../../kit/index.ts';
import { BasisList } from '../result/basis-list.tsx';

/** Everything that the whole result stands on. */
export const Standing = ({ forecast }: { forecast: Forecast }) => (
  <Disclosure level={2} title={`All that this stands on: ${forecast.evidence.length} inputs`}>
    <BasisList bases={forecast.evidence} ids={forecast.evidence.map((each) => each.id)} />
  </Disclosure>
);
