declare module 'psychrolib' {
  /** What the tests call of it; temperatures in °C, pressures in Pa, heights in m. */
  const psychrolib: {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    GetSatVapPres(temp: number): number;
    GetTWetBulbFromHumRatio(temp: number, ratio: number, pressure: number): number;
    GetHumRatioFromTWetBulb(temp: number, wetBulb: number, pressure: number): number;
    GetVapPresFromHumRatio(ratio: number, pressure: number): number;
    GetStandardAtmPressure(altitude: number): number;
  };
  export = psychrolib;
}
