import { useForecast } from '../../worker/index.ts';
import { Told } from '../result/told.tsx';

/** Before anyone wears it: pins, heat, felting, where they matter. */
export const Cautions = () => {
  const { forecast } = useForecast();
  const cautions = forecast?.notices.filter(({ code }) => code.startsWith('caution-')) ?? [];
  return <Told label="Before anyone wears it" notices={cautions} />;
};
