/** Hour, layer, depth in the layer [m], temperature [degC], relative humidity [%], water content [kg/m3], and a mark where only totals are compared. */
export type FieldPoint = readonly [
  hour: number,
  layer: string,
  depthInLayer_m: number,
  T_C: number,
  RH_percent: number,
  w_kgm3: number,
  front?: "front",
];

/** Hour and the water in each layer, outside first [kg/m2]. */
export type LayerTotals = readonly [hour: number, water_kgm2: readonly number[]];
