/**
 * Diffuse share of the global sun by the hour's clearness.
 * @param clearness  global over extraterrestrial on the horizontal, 0..1
 * Source: Erbs, Klein and Duffie 1982, Solar Energy 28, as in Duffie and Beckman ch. 2.
 */
export function diffuseShare(clearness: number): number {
  const k = Math.max(0, clearness);
  if (k <= 0.22) return 1 - 0.09 * k;
  if (k <= 0.8) return 0.9511 + k * (-0.1604 + k * (4.388 + k * (-16.638 + 12.336 * k)));
  return 0.165;
}

/**
 * Direct normal and diffuse from the global sun. Beam only where cos z > 0.02, never above 0.85 of a clear sky
 * (optical depth 0.10); the excess goes back into the diffuse part, so global = direct cos z + diffuse holds.
 * @param outsideNormal_Wm2  normal irradiance outside the atmosphere
 */
export function splitGlobal(
  global_Wm2: number,
  cosZenith: number,
  outsideNormal_Wm2: number,
): { readonly directNormal_Wm2: number; readonly diffuse_Wm2: number } {
  if (!(global_Wm2 > 0) || cosZenith <= 0.02) return { directNormal_Wm2: 0, diffuse_Wm2: Math.max(0, global_Wm2) };
  const share = diffuseShare(Math.min(1, global_Wm2 / (outsideNormal_Wm2 * cosZenith)));
  const most = 0.85 * outsideNormal_Wm2 * Math.exp(-0.1 / cosZenith);
  const direct = Math.min(most, (global_Wm2 * (1 - share)) / cosZenith);
  return { directNormal_Wm2: direct, diffuse_Wm2: global_Wm2 - direct * cosZenith };
}
