/** Complex number. */
interface Complex {
  readonly re: number;
  readonly im: number;
}

/** A layer of a periodic calculation; capacity 0 and thickness 1 make a film of resistance 1/conductivity. */
export interface PeriodicLayer {
  readonly thickness_m: number;
  readonly conductivity_WmK: number;
  readonly volumetricHeatCapacity_Jm3K: number;
}

/** Dynamic characteristics of a wall. Amplitudes [W/(m2 K)], time shifts [h], a lead is positive. */
export interface PeriodicResponse {
  readonly U_Wm2K: number;
  /** Heat flow into the room per kelvin of swing outside. */
  readonly transmittance_Wm2K: number;
  readonly transmittanceShift_h: number;
  readonly decrement: number;
  /** Heat flow from the room into the wall per kelvin of swing inside. */
  readonly insideAdmittance_Wm2K: number;
  readonly insideShift_h: number;
  readonly outsideAdmittance_Wm2K: number;
  readonly outsideShift_h: number;
  /** Areal heat capacities [J/(m2 K)]. */
  readonly insideCapacity_Jm2K: number;
  readonly outsideCapacity_Jm2K: number;
}

const complex = (re: number, im = 0): Complex => ({ re, im });
const plus = (a: Complex, b: Complex): Complex => complex(a.re + b.re, a.im + b.im);
const times = (a: Complex, b: Complex): Complex => complex(a.re * b.re - a.im * b.im, a.re * b.im + a.im * b.re);
const minus = (a: Complex): Complex => complex(-a.re, -a.im);
const over = (a: Complex, b: Complex): Complex => {
  const size = b.re * b.re + b.im * b.im;
  return complex((a.re * b.re + a.im * b.im) / size, (a.im * b.re - a.re * b.im) / size);
};
const size = (a: Complex): number => Math.hypot(a.re, a.im);

type Matrix = readonly [Complex, Complex, Complex, Complex];
const product = (a: Matrix, b: Matrix): Matrix => [
  plus(times(a[0], b[0]), times(a[1], b[2])),
  plus(times(a[0], b[1]), times(a[1], b[3])),
  plus(times(a[2], b[0]), times(a[3], b[2])),
  plus(times(a[2], b[1]), times(a[3], b[3])),
];

/** Heat transfer matrix of one layer: (T, q) at its outer face from (T, q) at its inner face. Source: ISO 13786:2017, 7.2 (form from memory). */
function layerMatrix(layer: PeriodicLayer, period_s: number): Matrix {
  const { thickness_m, conductivity_WmK, volumetricHeatCapacity_Jm3K } = layer;
  if (volumetricHeatCapacity_Jm3K === 0)
    return [complex(1), complex(-thickness_m / conductivity_WmK), complex(0), complex(1)];
  const depth_m = Math.sqrt((conductivity_WmK * period_s) / (Math.PI * volumetricHeatCapacity_Jm3K));
  const xi = thickness_m / depth_m;
  const [sh, ch, sn, cs] = [Math.sinh(xi), Math.cosh(xi), Math.sin(xi), Math.cos(xi)];
  const along = complex(ch * cs, sh * sn);
  const z12 = times(complex(-depth_m / (2 * conductivity_WmK)), complex(sh * cs + ch * sn, ch * sn - sh * cs));
  const z21 = times(complex(-conductivity_WmK / depth_m), complex(sh * cs - ch * sn, sh * cs + ch * sn));
  return [along, z12, z21, along];
}

/**
 * Response of a wall to a temperature that swings as a sine on one side, from the transfer matrices of ISO 13786:2017.
 * @param layers inner layer first, without films
 */
export function periodicResponse(
  layers: readonly PeriodicLayer[],
  insideFilm_m2KW: number,
  outsideFilm_m2KW: number,
  period_s: number,
): PeriodicResponse {
  const film = (resistance: number): PeriodicLayer => ({
    thickness_m: resistance,
    conductivity_WmK: 1,
    volumetricHeatCapacity_Jm3K: 0,
  });
  const all = [film(insideFilm_m2KW), ...layers, film(outsideFilm_m2KW)];
  const z = all.map((layer) => layerMatrix(layer, period_s)).reduce((inner, outer) => product(outer, inner));
  const U = 1 / all.reduce((sum, layer) => sum + layer.thickness_m / layer.conductivity_WmK, 0);
  const through = over(complex(-1), z[1]);
  const inside = minus(over(z[0], z[1]));
  const outside = minus(over(z[3], z[1]));
  const shift_h = (a: Complex): number => ((period_s / 3600) * Math.atan2(a.im, a.re)) / (2 * Math.PI);
  const capacity = (own: Complex): number => (period_s / (2 * Math.PI)) * size(plus(own, minus(through)));
  return {
    U_Wm2K: U,
    transmittance_Wm2K: size(through),
    transmittanceShift_h: shift_h(through),
    decrement: size(through) / U,
    insideAdmittance_Wm2K: size(inside),
    insideShift_h: shift_h(inside),
    outsideAdmittance_Wm2K: size(outside),
    outsideShift_h: shift_h(outside),
    insideCapacity_Jm2K: capacity(inside),
    outsideCapacity_Jm2K: capacity(outside),
  };
}
