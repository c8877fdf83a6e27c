/**
 * One load through time. On interval k, with tau running from 0 to 1:
 *
 *     value(tau) = start[k] + (end[k] - start[k]) tau + 6 bulge[k] tau (1 - tau)
 *
 * so its mean over the interval is (start + end)/2 + bulge. States at the hour (temperature, humidity, wind) are joined
 * by straight lines with no bulge; hourly amounts that must keep their sum (sun) use the bulge; rain is a step (start = end).
 */
export interface LoadSeries {
  readonly start: Float64Array;
  readonly end: Float64Array;
  readonly bulge: Float64Array;
}

/** What one face of the wall is exposed to. All series share `HourlyLoads.time_s`. */
export interface FaceLoads {
  /** Air temperature [K]. */
  readonly temperature_K: LoadSeries;
  /** Water vapour pressure of the air [Pa]. */
  readonly vapourPressure_Pa: LoadSeries;
  /** Heat film between air and face: convective where `longwave` is given, else convection and radiation in one [W/(m2 K)]. */
  readonly heatFilm_Wm2K: LoadSeries;
  /** Vapour film [kg/(m2 s Pa)]. */
  readonly vapourFilm_kgm2sPa: LoadSeries;
  /** Radiation absorbed by the face, sun times absorptance [W/m2]. */
  readonly absorbedRadiation_Wm2: LoadSeries;
  /** Longwave that arrives from sky and ground [W/m2] and the face's emissivity; null: it is inside the heat film. */
  readonly longwave: { readonly incoming_Wm2: LoadSeries; readonly emissivity: number } | null;
  /** Driving rain that hits the face [kg/(m2 s)]. */
  readonly rain_kgm2s: LoadSeries;
  /** Air pressure at the face from wind, stack and fan, above that of still outdoor air [Pa]. */
  readonly airPressure_Pa: LoadSeries;
  /** True: the face is held at temperature_K (no film). Laboratory faces only. */
  readonly heldTemperature: boolean;
  /** Given: the face is held at this suction [Pa] (no vapour film). Laboratory faces only. */
  readonly heldSuction_Pa: LoadSeries | null;
  /** True: what a face held by suction takes is liquid water, not vapour. */
  readonly heldInLiquid?: boolean;
}

/** The loads on both faces of a wall: plain data, all that a run needs to know of the weather and the room. */
export interface HourlyLoads {
  /** Breakpoints [s], n + 1 of them, from 0 upwards; no time step crosses one. */
  readonly time_s: Float64Array;
  /** True: after the last interval comes the first again (a year that repeats). */
  readonly repeats: boolean;
  /** Day of the year (0..364) and hour at time 0, so that results can be dated; a year has 365 days. */
  readonly startDay: number;
  readonly outside: FaceLoads;
  readonly inside: FaceLoads;
  /** Wind speed near the wall [m/s], for cavities and leaks. */
  readonly windSpeed_ms: LoadSeries;
  /** Air volume flow through the whole wall, positive inward [m3/(m2 s)]; absent: none. Laboratory cases only. */
  readonly throughFlow_ms?: LoadSeries;
  /** Barometric pressure [Pa], mean. */
  readonly barometricPressure_Pa: number;
}
