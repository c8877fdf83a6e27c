/** A layer of a steady calculation. */
export interface SeriesLayer {
  /** Thermal resistance [m2 K/W]. */
  readonly thermal_m2KW: number;
  /** Vapour resistance [m2 s Pa/kg]. */
  readonly vapour_m2sPakg: number;
}

/** Values at the planes of a wall (one more than its layers), inner face first, and the flows from inside to outside. */
export interface SeriesSolution {
  readonly T_C: readonly number[];
  readonly p_Pa: readonly number[];
  readonly heatFlow_Wm2: number;
  readonly vapourFlow_kgm2s: number;
}

/**
 * Steady heat and vapour flow through layers in series, storage, latent heat and condensation left out.
 * @param layers inner layer first
 * Source: ISO 13788:2012, 6.4 (steady diffusion); the vapour films have no resistance.
 */
export function layersInSeries(
  layers: readonly SeriesLayer[],
  inside: { readonly T_C: number; readonly p_Pa: number; readonly film_m2KW: number },
  outside: { readonly T_C: number; readonly p_Pa: number; readonly film_m2KW: number },
): SeriesSolution {
  const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);
  const heatFlow =
    (inside.T_C - outside.T_C) / (inside.film_m2KW + sum(layers.map((l) => l.thermal_m2KW)) + outside.film_m2KW);
  const vapourFlow = (inside.p_Pa - outside.p_Pa) / sum(layers.map((l) => l.vapour_m2sPakg));
  const T_C = [inside.T_C - heatFlow * inside.film_m2KW];
  const p_Pa = [inside.p_Pa];
  layers.forEach((layer, k) => {
    T_C.push(T_C[k]! - heatFlow * layer.thermal_m2KW);
    p_Pa.push(p_Pa[k]! - vapourFlow * layer.vapour_m2sPakg);
  });
  return { T_C, p_Pa, heatFlow_Wm2: heatFlow, vapourFlow_kgm2s: vapourFlow };
}
