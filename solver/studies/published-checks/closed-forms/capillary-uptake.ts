/** What a half-space does that stands in water from time 0 on, against lambda = x/sqrt(t). */
export interface UptakeSolution {
  /** Uptake is sorptivity sqrt(t) [kg/(m2 s^0.5)]. */
  readonly sorptivity: number;
  /** Water content [kg/m3] at x/sqrt(t) [m/s^0.5]. */
  readonly waterAt: (lambda: number) => number;
}

const steps = 4000;

/**
 * Horizontal uptake with a diffusivity that depends on water content, start w_i, face held at w_f. With lambda = x/sqrt(t)
 * and F(w) the flow times sqrt(t), dF/dw = lambda/2 and dlambda/dw = -D(w)/F, F(w_f) = S/2, F(w_i) = 0: an equation in w
 * alone, shot from the face inward; S by bisection. Integrated by the fourth-order Runge-Kutta rule.
 *
 * Source: Philip (1957), The theory of infiltration 4, Soil Science 84, 257-264 (form from memory, derived again here).
 */
export function capillaryUptake(diffusivity_m2s: (w: number) => number, start: number, face: number): UptakeSolution {
  const dw = (face - start) / steps;
  const profile = (sorptivity: number): { w: Float64Array; lambda: Float64Array; reachedStart: boolean } => {
    const w = new Float64Array(steps + 1);
    const lambda = new Float64Array(steps + 1);
    w[0] = face;
    let flow = sorptivity / 2;
    let at = 0;
    for (let k = 0; k < steps; k += 1) {
      const here = face - k * dw;
      const slope = (water: number, f: number): number => diffusivity_m2s(water) / f;
      const f1 = -at / 2;
      const a1 = slope(here, flow);
      const f2 = -(at + (dw / 2) * a1) / 2;
      const flow2 = flow + (dw / 2) * f1;
      const a2 = slope(here - dw / 2, flow2);
      const f3 = -(at + (dw / 2) * a2) / 2;
      const flow3 = flow + (dw / 2) * f2;
      const a3 = slope(here - dw / 2, flow3);
      const f4 = -(at + dw * a3) / 2;
      const flow4 = flow + dw * f3;
      if (!(flow2 > 0 && flow3 > 0 && flow4 > 0))
        return { w: w.slice(0, k + 1), lambda: lambda.slice(0, k + 1), reachedStart: false };
      const a4 = slope(here - dw, flow4);
      flow += (dw / 6) * (f1 + 2 * f2 + 2 * f3 + f4);
      at += (dw / 6) * (a1 + 2 * a2 + 2 * a3 + a4);
      w[k + 1] = here - dw;
      lambda[k + 1] = at;
      if (!(flow > 0)) return { w: w.slice(0, k + 2), lambda: lambda.slice(0, k + 2), reachedStart: false };
    }
    return { w, lambda, reachedStart: true };
  };

  let low = 0;
  let high = 1;
  while (!profile(high).reachedStart) high *= 2;
  for (let k = 0; k < 80; k += 1) {
    const middle = (low + high) / 2;
    if (profile(middle).reachedStart) high = middle;
    else low = middle;
  }
  const solved = profile(low);
  return {
    sorptivity: (low + high) / 2,
    waterAt: (lambda) => {
      const beyond = solved.lambda.findIndex((value) => value >= lambda);
      if (beyond === -1) return start;
      if (beyond === 0) return face;
      const [l0, l1] = [solved.lambda[beyond - 1]!, solved.lambda[beyond]!];
      const [w0, w1] = [solved.w[beyond - 1]!, solved.w[beyond]!];
      return w0 + ((w1 - w0) * (lambda - l0)) / (l1 - l0);
    },
  };
}
