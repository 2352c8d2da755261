import { useForecast } from '../../worker/index.ts';
import { Told } from '../result/told.tsx';

/** Before anyone wears it, and before it is put away. */
const AFTER = new Set(['caution-pins', 'caution-moths']);

export const Cautions = () => {
  const { forecast } = useForecast();
  const cautions = forecast?.notices.filter(({ code }) => AFTER.has(code)) ?? [];
  return <Told label="Before anyone wears it" notices={cautions} />;
};
