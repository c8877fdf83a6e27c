import { overhangMasks, skyView, type Overhang } from "./overhang.ts";
import type { SunPosition } from "./sun-position.ts";

const degree = Math.PI / 180;
/** Normal irradiance outside the atmosphere at mean distance [W/m2]. Source: Duffie and Beckman, Solar Engineering of Thermal Processes, ch. 1. */
export const solarConstant_Wm2 = 1367;

export interface FaceGeometry {
  /** Clockwise from north. */
  readonly azimuth_deg: number;
  /** 0 faces up, 90 is a wall, 180 faces down. */
  readonly tilt_deg: number;
  readonly groundReflectance: number;
  readonly overhang?: Overhang | undefined;
}

export interface FaceIrradiance {
  readonly beam_Wm2: number;
  readonly sky_Wm2: number;
  readonly ground_Wm2: number;
  readonly total_Wm2: number;
}

/** Cosine of the angle between sun and face normal; negative behind the face. */
export function cosIncidence(sun: SunPosition, azimuth_deg: number, tilt_deg: number): number {
  const sinZenith = Math.sqrt(Math.max(0, 1 - sun.cosZenith * sun.cosZenith));
  return (
    sun.cosZenith * Math.cos(tilt_deg * degree) +
    sinZenith * Math.sin(tilt_deg * degree) * Math.cos((sun.azimuth_deg - azimuth_deg) * degree)
  );
}

/**
 * Sun on a face from the hour's global, direct normal and diffuse [W/m2].
 *
 * `hdkr`: circumsolar and horizon brightening (Hay, Davies, Klucher, Reindl); `isotropic`: an even sky. The circumsolar part is
 * left out when the sun stands lower than 1 degree, and beam ratio is held to 20: no division by a small cosine.
 * Source: Duffie and Beckman, Solar Engineering of Thermal Processes, 4th ed., ch. 2 (HDKR and Liu-Jordan models).
 */
export function faceIrradiance(
  sun: SunPosition,
  global_Wm2: number,
  directNormal_Wm2: number,
  diffuse_Wm2: number,
  face: FaceGeometry,
  model: "hdkr" | "isotropic" = "hdkr",
): FaceIrradiance {
  const up = sun.cosZenith > 0;
  const facing = Math.max(0, cosIncidence(sun, face.azimuth_deg, face.tilt_deg));
  const shaded = overhangMasks(sun, face.azimuth_deg, face.overhang);
  const beam = up && !shaded ? directNormal_Wm2 * facing : 0;
  const view = skyView(face.tilt_deg, face.overhang);
  let sky = diffuse_Wm2 * view;
  if (model === "hdkr" && global_Wm2 > 0 && up) {
    const transmitted = Math.min(1, directNormal_Wm2 / (solarConstant_Wm2 * sun.distanceFactor));
    const beamShare = Math.min(1, Math.max(0, directNormal_Wm2 * sun.cosZenith) / global_Wm2);
    const horizon = 1 + Math.sqrt(beamShare) * Math.sin((face.tilt_deg / 2) * degree) ** 3;
    const circumsolarCounts = sun.altitude_deg >= 1;
    const circumsolar = circumsolarCounts && !shaded ? transmitted * Math.min(20, facing / sun.cosZenith) : 0;
    sky = diffuse_Wm2 * ((1 - (circumsolarCounts ? transmitted : 0)) * view * horizon + circumsolar);
  }
  const ground = (global_Wm2 * face.groundReflectance * (1 - Math.cos(face.tilt_deg * degree))) / 2;
  return { beam_Wm2: beam, sky_Wm2: sky, ground_Wm2: ground, total_Wm2: beam + sky + ground };
}
