import { saturationPressure_Pa } from "./saturation-pressure.ts";

/** Gas constant of water vapour [J/(kg K)], 8.314462618/0.01801528. */
const gasConstantVapour_JkgK = 461.52;
const zeroCelsius_K = 273.15;

export interface LeakDeposit {
  readonly roomVapour_kgm3: number;
  readonly faceSaturation_kgm3: number;
  /** 0 where the face is warm enough [kg/(m2 s)]. */
  readonly deposit_kgm2s: number;
}

/**
 * Water that room air leaves at a cold face when it leaks past it: all vapour above saturation there. An upper bound, since
 * much of the air never touches the face.
 *
 * @param flow_m3m2s air that leaks outward, per area of wall [m3/(m2 s)], >= 0
 * Source: moist-air arithmetic on the saturation form of ISO 13788 (MEMORY).
 * Checked: tests/solver/physics/steady/leak-deposit.test.ts.
 */
export function leakDeposit(
  flow_m3m2s: number,
  indoor: { readonly temperature_C: number; readonly relativeHumidity: number },
  face_C: number,
): LeakDeposit {
  if (!(flow_m3m2s >= 0)) throw new RangeError(`flow_m3m2s must be >= 0, got ${flow_m3m2s}`);
  const concentration = (pressure_Pa: number, temperature_C: number): number =>
    pressure_Pa / (gasConstantVapour_JkgK * (temperature_C + zeroCelsius_K));
  const roomVapour_kgm3 = concentration(
    indoor.relativeHumidity * saturationPressure_Pa(indoor.temperature_C),
    indoor.temperature_C,
  );
  const faceSaturation_kgm3 = concentration(saturationPressure_Pa(face_C), face_C);
  return {
    roomVapour_kgm3,
    faceSaturation_kgm3,
    deposit_kgm2s: flow_m3m2s * Math.max(0, roomVapour_kgm3 - faceSaturation_kgm3),
  };
}
