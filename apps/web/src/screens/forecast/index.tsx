import { useForecast } from '../../worker/index.ts';
import { BrokenForecast, NotYet, Working } from './not-yet.tsx';
import { Result } from './result.tsx';
import { WhichSize } from './which-size.tsx';
import './forecast.css';

/** What it will measure, how sure that is, and how it will fit. */
const Screen = () => {
  const { forecast, sizes, faults, broken } = useForecast();
  if (broken !== null) return <BrokenForecast message={broken} />;
  if (sizes !== null) return <WhichSize each={sizes} />;
  if (faults.length > 0) return <NotYet faults={faults} />;
  if (forecast === null) return <Working />;
  return <Result forecast={forecast} />;
};
export default Screen;
