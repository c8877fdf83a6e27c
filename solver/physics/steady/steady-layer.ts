/** One layer of a wall as the steady methods see it: two numbers. Walls are listed outside first. */
export interface SteadyLayer {
  readonly id: string;
  /** Thermal resistance [m2 K/W], 0 for a membrane. */
  readonly resistance_m2KW: number;
  /** Vapour diffusion equivalent air layer thickness sd = mu d [m]. */
  readonly sd_m: number;
}

/** Vapour permeability of still air that the steady methods use [kg/(m s Pa)]. Source: ISO 13788 (MEMORY). */
export const airPermeability_kgmsPa = 2e-10;

/** Surface resistances of the condensation check for a wall [m2 K/W]. Source: ISO 6946, horizontal heat flow (SEEN, secondary). */
export const wallFilms = { outside_m2KW: 0.04, inside_m2KW: 0.13 } as const;
/** Inner film of the surface-mould check and of the season blocks [m2 K/W]. Source: ISO 13788 (SEEN, secondary). */
export const cautiousInsideFilm_m2KW = 0.25;

export interface Films {
  readonly outside_m2KW: number;
  readonly inside_m2KW: number;
}

export interface AirState {
  readonly temperature_C: number;
  readonly vapourPressure_Pa: number;
}

/** Refuses what no wall can be; a broken promise of the caller, not a user's slip. */
export function requireLayers(layers: readonly SteadyLayer[]): void {
  if (layers.length === 0) throw new RangeError("layers must hold at least one layer, got 0");
  for (const layer of layers) {
    if (!(layer.resistance_m2KW >= 0)) {
      throw new RangeError(`resistance_m2KW of ${layer.id} must be >= 0, got ${layer.resistance_m2KW}`);
    }
    if (!(layer.sd_m >= 0)) throw new RangeError(`sd_m of ${layer.id} must be >= 0, got ${layer.sd_m}`);
  }
}
