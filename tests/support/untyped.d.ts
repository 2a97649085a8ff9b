/** Independent libraries that come without types; only what the tests call. */
declare module 'psychrolib' {
  const psychrolib: {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    /** °C, relative humidity 0…1, Pa. */
    GetTWetBulbFromRelHum(tDryBulb: number, relHum: number, pressure: number): number;
    /** m above sea level → Pa. */
    GetStandardAtmPressure(altitude: number): number;
  };
  export default psychrolib;
}
declare module 'js-quantities' {
  interface Qty {
    readonly scalar: number;
    to(unit: string): Qty;
  }
  const Qty: (value: number, unit: string) => Qty;
  export default Qty;
}
declare module 'jstat' {
  const jstat: { readonly studentt: { inv(p: number, dof: number): number } };
  export default jstat;
}
