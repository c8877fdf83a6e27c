/** Metal fasteners that pass through the insulation. */
export interface Fasteners {
  /** Per m2 of wall. */
  readonly perM2: number;
  readonly diameter_m: number;
  /** Shank [W/(m K)]: carbon steel 50, stainless 17. */
  readonly conductivity_WmK: number;
  /** How far they reach into the insulation [m]; the whole thickness when absent. */
  readonly length_m?: number | undefined;
}

/** Coefficient for a fastener that passes right through the insulation [-]. */
const fullPenetration = 0.8;

/**
 * Rise of U by point fasteners through an insulation layer [W/(m2 K)]:
 * dU = alpha lambda n A/d0 (R1/RT)^2, alpha 0.8, or 0.8 d1/d0 where they do not reach through.
 *
 * @param insulation_m thickness d0, > 0
 * @param insulation_m2KW resistance R1 of the layer
 * @param total_m2KW resistance RT of the wall without fasteners, films included
 * Source: ISO 6946, annex on mechanical fasteners (form MEMORY). Clips and girts want a measured value instead.
 */
export function fastenerCorrection_Wm2K(
  fasteners: Fasteners,
  insulation_m: number,
  insulation_m2KW: number,
  total_m2KW: number,
): number {
  const area_m2 = (Math.PI * fasteners.diameter_m ** 2) / 4;
  const reach = Math.min(1, (fasteners.length_m ?? insulation_m) / insulation_m);
  return (
    ((fullPenetration * reach * fasteners.conductivity_WmK * fasteners.perM2 * area_m2) / insulation_m) *
    (insulation_m2KW / total_m2KW) ** 2
  );
}
