/** The part of the library that the checks use; it ships no types. Pa, °C, fractions. */
declare module 'psychrolib' {
  const psychrolib: {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    GetSatVapPres(temperature: number): number;
    GetTWetBulbFromRelHum(temperature: number, humidity: number, pressure: number): number;
  };
  export default psychrolib;
}
