import { gasConstantVapour_JkgK } from "../air/moist-air.ts";

/**
 * Heat film of an outdoor face by convection [W/(m2 K)]: 4 + 4 v.
 * @param windSpeed_ms  near the surface, >= 0
 * Source: ISO 6946:2017 annex C (h_ce = 4 + 4 v; MEMORY).
 */
export function outdoorConvection_Wm2K(windSpeed_ms: number): number {
  return 4 + 4 * windSpeed_ms;
}

export interface IndoorFilm {
  /** Convection and radiation together [W/(m2 K)], the inverse of the surface resistance. */
  readonly combined_Wm2K: number;
  /** The convective part alone [W/(m2 K)], which carries the vapour. */
  readonly convective_Wm2K: number;
}

/**
 * Indoor surface films by direction of heat flow; within 30 degrees of vertical counts as a wall.
 * Source: ISO 6946:2017 table 7 (0.13, 0.10, 0.17 m2 K/W; SEEN in a guide to the standard) and annex C (2.5, 5.0, 0.7; MEMORY).
 */
export function indoorFilm(tilt_deg: number): IndoorFilm {
  if (tilt_deg < 60) return { combined_Wm2K: 1 / 0.1, convective_Wm2K: 5 };
  if (tilt_deg > 120) return { combined_Wm2K: 1 / 0.17, convective_Wm2K: 0.7 };
  return { combined_Wm2K: 1 / 0.13, convective_Wm2K: 2.5 };
}

/** Density times heat capacity of air in the Lewis relation [J/(m3 K)]: 1.2 kg/m3 x 1005 J/(kg K). */
const airHeatCapacity_Jm3K = 1.2 * 1005;

/**
 * Vapour film from the convective heat film [kg/(m2 s Pa)]: h_c/(rho c_p Le^(2/3) R_v T), Lewis number 1.
 * Never from the combined coefficient: radiation carries no vapour. Source: Lewis relation, ASHRAE Handbook Fundamentals, mass transfer.
 */
export function vapourFilm_kgm2sPa(convective_Wm2K: number, temperature_C: number): number {
  return convective_Wm2K / (airHeatCapacity_Jm3K * gasConstantVapour_JkgK * (temperature_C + 273.15));
}

/** Radiative film of a face among black surroundings at the same temperature [W/(m2 K)]: 4 e sigma T^3. Source: ISO 6946:2017 annex C. */
export function radiativeFilm_Wm2K(emissivity: number, temperature_C: number): number {
  return 4 * emissivity * 5.670374419e-8 * (temperature_C + 273.15) ** 3;
}
