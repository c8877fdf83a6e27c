import type { LabPhysics } from "../model/index.ts";

/** Constants and forms that a run uses; a laboratory case may prescribe its own. */
export interface PhysicsSettings {
  /** Saturation pressure of water vapour [Pa] over T [K]. */
  readonly saturationPressure: (temperature_K: number) => number;
  /** Vapour permeability of still air [kg/(m s Pa)] over T [K]. */
  readonly airPermeability: (temperature_K: number) => number;
  readonly waterDensity_kgm3: number;
  readonly gasConstantVapour_JkgK: number;
  /** Heat of evaporation at 0 degC [J/kg]. */
  readonly latentHeat_Jkg: number;
  readonly waterHeatCapacity_JkgK: number;
  readonly vapourHeatCapacity_JkgK: number;
  readonly airVolumetricHeatCapacity_Jm3K: number;
  readonly barometricPressure_Pa: number;
  /** Moving liquid and vapour carry their sensible heat. */
  readonly sensibleHeat: boolean;
  readonly heat: boolean;
  readonly moisture: boolean;
}

/** ISO 10456 uses 1000 kg/m3; the suction of Kelvin's law is defined with it. */
const waterDensity_kgm3 = 1000;
/** Specific gas constant of water vapour [J/(kg K)]; R/M = 8.314/0.018015. */
const gasConstantVapour_JkgK = 461.5;
/** Evaporation at 0 degC [J/kg] and heat capacities [J/(kg K)]; ASHRAE Handbook - Fundamentals, psychrometrics (MEMORY). */
const latentHeat_Jkg = 2.501e6;
const waterHeatCapacity_JkgK = 4186;
const vapourHeatCapacity_JkgK = 1860;
/** 1.2 kg/m3 x 1005 J/(kg K). */
const airVolumetricHeatCapacity_Jm3K = 1206;

/**
 * Over liquid water at every temperature: pores hold supercooled water and weather stations report humidity over water.
 * Source: Hyland and Wexler (1983) as in ASHRAE Handbook - Fundamentals, psychrometrics, eq. for liquid water (MEMORY).
 */
export function saturationOverWater(T: number): number {
  return Math.exp(
    -5.8002206e3 / T +
      1.3914993 -
      4.8640239e-2 * T +
      4.1764768e-5 * T * T -
      1.4452093e-8 * T * T * T +
      6.5459673 * Math.log(T),
  );
}

const saturationForms: Record<NonNullable<LabPhysics["saturationPressure"]>, (T: number) => number> = {
  "hyland-wexler": saturationOverWater,
  // ISO 13788:2012, form for t >= 0 degC, used at all temperatures where a case prescribes it (MEMORY).
  iso13788: (T) => 610.5 * Math.exp((17.269 * (T - 273.15)) / (237.3 + T - 273.15)),
  // HAMSTAD WP2, Hagentoft 2002 (MEMORY).
  log: (T) => Math.exp(65.8094 - 7066.27 / T - 5.976 * Math.log(T)),
};

/** Schirmer (1938): 2.306e-5 (101325/P) (T/273.15)^1.81 / (R_v T), as quoted in EN 15026 and ISO 12572 (MEMORY). */
function schirmer(barometricPressure_Pa: number, R: number): (T: number) => number {
  const scale = (2.306e-5 * 101325) / (barometricPressure_Pa * R);
  return (T) => (scale * Math.pow(T / 273.15, 1.81)) / T;
}

export function physicsSettings(lab: LabPhysics | undefined, barometricPressure_Pa: number): PhysicsSettings {
  const R = lab?.gasConstantVapour_JkgK ?? gasConstantVapour_JkgK;
  const form = lab?.airPermeability ?? "schirmer";
  return {
    saturationPressure: saturationForms[lab?.saturationPressure ?? "hyland-wexler"],
    airPermeability:
      form === "schirmer"
        ? schirmer(barometricPressure_Pa, R)
        : typeof form === "number"
          ? () => form
          : (T) => form.coefficient_m2s / (R * T),
    waterDensity_kgm3: lab?.waterDensity_kgm3 ?? waterDensity_kgm3,
    gasConstantVapour_JkgK: R,
    latentHeat_Jkg: lab?.latentHeat_Jkg ?? latentHeat_Jkg,
    waterHeatCapacity_JkgK: lab?.waterHeatCapacity_JkgK ?? waterHeatCapacity_JkgK,
    vapourHeatCapacity_JkgK,
    airVolumetricHeatCapacity_Jm3K: lab?.airVolumetricHeatCapacity_Jm3K ?? airVolumetricHeatCapacity_Jm3K,
    barometricPressure_Pa,
    sensibleHeat: lab?.sensibleHeatOfMovingWater ?? true,
    heat: lab?.heat ?? true,
    moisture: lab?.moisture ?? true,
  };
}
