import type { Overhang } from "../sun/overhang.ts";
import type { Shelter } from "../films/local-wind.ts";

/** The outdoor face as a project describes it. */
export interface FaceSetting {
  /** Clockwise from north: N 0, E 90, S 180, W 270. */
  readonly azimuth_deg: number;
  /** 0 faces up, 90 is a wall. */
  readonly tilt_deg: number;
  /** Above ground, of the part of wall looked at. */
  readonly height_m?: number | undefined;
  readonly shelter?: Shelter | undefined;
  readonly solarAbsorptance: number;
  readonly longwaveEmissivity: number;
  readonly groundReflectance?: number | undefined;
  readonly overhang?: Overhang | undefined;
}

export interface RainSetting {
  readonly exposureFactor?: number | undefined;
  readonly depositionFactor?: number | undefined;
  readonly method?: "ashrae160" | "iso15927" | undefined;
}

/** What stands where a project says nothing. Common practice, no source. */
export const usual = { height_m: 5, shelter: "medium", groundReflectance: 0.2 } as const;
