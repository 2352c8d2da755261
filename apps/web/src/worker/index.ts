export { type ForecastNow, ForecastProvider, useForecast } from './forecast-context.tsx';
