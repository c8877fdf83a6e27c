import { Matrix, LuDecomposition } from "ml-matrix";

/**
 * Independent answer to steps of temperature and humidity at the face of a half-space of the EN 15026 benchmark material. With eta = x/sqrt(t) the
 * coupled balances are a two-point boundary-value problem in T, ln s, and the flows Q and G (times sqrt(t)); solved by the fourth-order
 * Hermite-Simpson collocation on a graded mesh with Newton's method. Shares no code with the solver: functions are written out again.
 */
export interface State {
  readonly T_C: number;
  readonly RH: number;
  readonly w_kgm3: number;
}

const rhoR = 1000 * 462;
const latent = 2.5e6;
const psat = (T: number): number => 610.5 * Math.exp((17.269 * (T - 273.15)) / (237.3 + T - 273.15));
const psatSlope = (T: number): number => (psat(T) * 17.269 * 237.3) / (237.3 + T - 273.15) ** 2;
const water = (s: number): number => 146 / (1 + (8e-8 * s) ** 1.6) ** 0.375;
const waterSlope = (s: number): number => (-0.6 * water(s) * (8e-8 * s) ** 1.6) / (s * (1 + (8e-8 * s) ** 1.6));
const permeability = (T: number, w: number): number => {
  const r = 1 - w / 146;
  return ((26.1e-6 / (462 * T) / 200) * r) / (0.503 * r * r + 0.497);
};
const conductivity = (w: number): number => {
  const z = w - 73;
  return Math.exp(
    -39.2619 + 0.0704 * z - 1.742e-4 * z ** 2 - 2.7953e-6 * z ** 3 - 1.1566e-7 * z ** 4 + 2.5969e-9 * z ** 5,
  );
};

/** d/d eta of [T, ln s, Q, G]. Q and G are scaled to order one. */
const scaleQ = 1e4;
const scaleG = 1e-3;
function slopes(eta: number, y: readonly number[]): number[] {
  const [T, u, q, g] = y as [number, number, number, number];
  const s = Math.exp(u);
  const w = water(s);
  const p = psat(T) * Math.exp(-s / (rhoR * T));
  const pT = p * (psatSlope(T) / psat(T) + s / (rhoR * T * T));
  const ps = -p / (rhoR * T);
  const delta = permeability(T, w);
  const K = conductivity(w);
  const lambda = 1.5 + 15.8e-3 * w;
  const [Q, G] = [q * scaleQ, g * scaleG];
  const sSlope = (G + (delta * pT * (latent * G - Q)) / lambda) / (K - delta * ps + (delta * pT * latent * K) / lambda);
  const TSlope = (latent * (G - K * sSlope) - Q) / lambda;
  return [
    TSlope,
    sSlope / s,
    ((eta / 2) * (1.824e6 + 4187 * w) * TSlope) / scaleQ,
    ((eta / 2) * waterSlope(s) * sSlope) / scaleG,
  ];
}

const size = 4;

/**
 * @param face held state at x = 0, @param start state of the half-space, both [degC] and [0..1]
 * @param guess a rough profile over eta to start Newton from
 */
export function similaritySolution(
  face: { T_C: number; RH: number },
  start: { T_C: number; RH: number },
  guess: (eta: number) => { T_C: number; RH: number },
  nodes = 140,
): (x_m: number, time_s: number) => State {
  const end = 0.0105;
  // A sinh mesh: cells of 2e-7 at the face, where moisture lives, growing to the width of the heat profile.
  const stretch = 8.5;
  const eta = Array.from(
    { length: nodes },
    (_, k) => (end * Math.sinh((stretch * k) / (nodes - 1))) / Math.sinh(stretch),
  );
  const suction = (T: number, RH: number): number => -rhoR * T * Math.log(RH);
  const unknowns = new Float64Array(size * nodes);
  eta.forEach((at, k) => {
    const { T_C, RH } = guess(at);
    unknowns[size * k] = T_C + 273.15;
    unknowns[size * k + 1] = Math.log(suction(T_C + 273.15, RH));
  });
  const [faceT, startT] = [face.T_C + 273.15, start.T_C + 273.15];
  const [faceU, startU] = [Math.log(suction(faceT, face.RH)), Math.log(suction(startT, start.RH))];

  const cell = (k: number, left: readonly number[], right: readonly number[]): number[] => {
    const h = eta[k + 1]! - eta[k]!;
    const [fl, fr] = [slopes(eta[k]!, left), slopes(eta[k + 1]!, right)];
    const middle = left.map((value, i) => (value + right[i]!) / 2 + (h / 8) * (fl[i]! - fr[i]!));
    const fm = slopes((eta[k]! + eta[k + 1]!) / 2, middle);
    return left.map((value, i) => right[i]! - value - (h / 6) * (fl[i]! + 4 * fm[i]! + fr[i]!));
  };
  const node = (k: number): number[] => Array.from(unknowns.subarray(size * k, size * k + size));

  const total = size * nodes;
  for (let iteration = 0; iteration < 60; iteration += 1) {
    const system = Matrix.zeros(total, total);
    const residual = Matrix.zeros(total, 1);
    system.set(0, 0, 1);
    residual.set(0, 0, unknowns[0]! - faceT);
    system.set(1, 1, 1);
    residual.set(1, 0, unknowns[1]! - faceU);
    for (let k = 0; k < nodes - 1; k += 1) {
      const [left, right] = [node(k), node(k + 1)];
      const row = 2 + size * k;
      const base = cell(k, left, right);
      base.forEach((value, i) => residual.set(row + i, 0, value));
      for (let j = 0; j < 2 * size; j += 1) {
        const shifted: [number[], number[]] = [[...left], [...right]];
        const side = shifted[j < size ? 0 : 1];
        const step = 1e-6 * Math.max(Math.abs(side[j % size]!), 1e-3);
        side[j % size]! += step;
        cell(k, shifted[0], shifted[1]).forEach((value, i) => {
          system.set(row + i, size * k + j, (value - base[i]!) / step);
        });
      }
    }
    system.set(total - 2, total - size, 1);
    residual.set(total - 2, 0, unknowns[total - size]! - startT);
    system.set(total - 1, total - size + 1, 1);
    residual.set(total - 1, 0, unknowns[total - size + 1]! - startU);
    const change = new LuDecomposition(system).solve(residual);
    let [largestT, largestU] = [0, 0];
    for (let k = 0; k < nodes; k += 1) {
      largestT = Math.max(largestT, Math.abs(change.get(size * k, 0)));
      largestU = Math.max(largestU, Math.abs(change.get(size * k + 1, 0)));
    }
    const damping = Math.min(1, 5 / largestT, 0.3 / largestU);
    for (let i = 0; i < total; i += 1) unknowns[i]! -= damping * change.get(i, 0);
    if (damping === 1 && largestT < 1e-8 && largestU < 1e-9) {
      return (x_m, time_s) => {
        const at = Math.min(x_m / Math.sqrt(time_s), end);
        const k = Math.min(Math.max(eta.findIndex((value) => value > at) - 1, 0), nodes - 2);
        const [left, right] = [node(k), node(k + 1)];
        const h = eta[k + 1]! - eta[k]!;
        const z = (at - eta[k]!) / h;
        const [fl, fr] = [slopes(eta[k]!, left), slopes(eta[k + 1]!, right)];
        const [T, u] = [0, 1].map(
          (i) =>
            (1 + 2 * z) * (1 - z) ** 2 * left[i]! +
            z * (1 - z) ** 2 * h * fl[i]! +
            z * z * (3 - 2 * z) * right[i]! +
            z * z * (z - 1) * h * fr[i]!,
        ) as [number, number];
        const s = Math.exp(u);
        return { T_C: T - 273.15, RH: Math.exp(-s / (rhoR * T)), w_kgm3: water(s) };
      };
    }
  }
  throw new Error("the similarity solution did not settle in 60 iterations");
}
