/**
 * Share of the final uptake of a slab whose two faces jump to a new concentration at time 0 [-].
 * Source: Crank, The Mathematics of Diffusion (2nd ed. 1975), eq. 4.18. Below about 0.5 it is 4 sqrt(D t/(pi l^2)).
 */
export function slabUptakeShare(time_s: number, diffusivity_m2s: number, thickness_m: number): number {
  let sum = 0;
  for (let n = 0; n < 50_000; n += 1) {
    const k = (2 * n + 1) * Math.PI;
    const decay = Math.exp((-diffusivity_m2s * k * k * time_s) / thickness_m ** 2);
    if (decay < 1e-17) break;
    sum += (8 / (k * k)) * decay;
  }
  return 1 - sum;
}
