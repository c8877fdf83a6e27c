import type { Finding, Material } from "../../../solver/index.ts";
import {
  condensingPlane,
  planeResistances,
  steadyFace_C,
  roomDewPoint_C,
  type MemberSummary,
} from "../../../solver/studies/index.ts";
import { winterHumidityOf } from "../../../solver/studies/change-case.ts";
import type { Case, CaseLayer } from "../../../solver/model/index.ts";

/** A wall and a stand-in for a run: one cold steady winter, moisture content rising with the dew point's excess over the face. Tests of wiring only. */

const bulk = (
  id: string,
  conductivity: number,
  mu: number,
  density: number,
  extra: Partial<Material> = {},
): Material => ({
  id,
  name: id,
  kind: "bulk",
  density_kgm3: density,
  heatCapacity_JkgK: 1000,
  conductivity_WmK: conductivity,
  vapour: { resistanceFactor: mu },
  sorption: { slope_kgm3: 10 },
  ...extra,
});

const layer = (
  material: Material,
  thickness_m: number,
  id = material.id,
  extra: Partial<CaseLayer> = {},
): CaseLayer => ({
  id,
  name: material.name,
  material,
  thickness_m,
  contact: null,
  airChangesPerHour: null,
  initial: { relativeHumidity: 0.8 },
  ...extra,
});

export const fibre = bulk("fibre", 0.04, 1.2, 20);
export const foam = bulk("foam", 0.029, 120, 30);
export const strand = bulk("strand", 0.12, 200, 650, {
  wood: true,
  sorption: {
    relativeHumidity: [
      [0.3, 35],
      [0.8, 100],
      [0.98, 170],
    ],
  },
});
export const gypsum = bulk("gypsum", 0.16, 8, 680);
export const paint: Material = { id: "paint", name: "paint", kind: "membrane", permeance_kgm2sPa: 5.7e-10 };
export const wrap: Material = { id: "wrap", name: "wrap", kind: "membrane", permeance_kgm2sPa: 3e-9 };
export const ventedSpace: Material = { id: "space", name: "vented space", kind: "air", thermalResistance_m2KW: 0.16 };
export const siding = bulk("siding", 0.2, 50, 1300);

export const frameWall = (foam_m: number): Case => ({
  project: "Test",
  option: "A",
  optionName: "A",
  path: "bay",
  pathName: "Stud bay",
  pathKind: "studBay",
  layers: [
    layer(siding, 0.008),
    layer(ventedSpace, 0.019, "space", { airChangesPerHour: 100 }),
    layer(wrap, 0),
    ...(foam_m > 0 ? [layer(foam, foam_m)] : []),
    layer(strand, 0.011),
    layer(fibre, 0.14),
    layer(gypsum, 0.0127),
    layer(paint, 0),
  ],
  leaks: [],
  probes: [],
  exposure: {
    kind: "site",
    site: {
      weather: { city: "burlington-vt" },
      face: { azimuth_deg: 0, tilt_deg: 90, solarAbsorptance: 0.6, longwaveEmissivity: 0.9 },
    },
    face: { azimuth_deg: 0, tilt_deg: 90, solarAbsorptance: 0.6, longwaveEmissivity: 0.9 },
    indoor: {
      method: "seasonal",
      winterTemperature_C: 21,
      summerTemperature_C: 24,
      winterRelativeHumidity: 0.35,
      summerRelativeHumidity: 0.5,
    },
    air: null,
  },
  run: { start: "10-01", years: 2, initial: "delivered" },
});

const finding = (id: string, measured: number, limit: number): Finding => ({
  id,
  probe: "",
  statement: id,
  measured,
  unit: "%",
  limit,
  margin: limit - measured,
  when: "",
  holds: measured <= limit,
  source: "test",
  swayedBy: [],
});

/** Winter of the stand-in [degC]. */
export const winter_C = -6;

export function fakeRun(aCase: Case): MemberSummary {
  if (aCase.exposure.kind !== "site") throw new Error("a site");
  const plane = condensingPlane(aCase);
  const humidity = winterHumidityOf(aCase.exposure.indoor) ?? 0.35;
  const face = steadyFace_C(winter_C, 21, planeResistances(aCase));
  const leak = aCase.leaks.reduce((sum, each) => sum + (typeof each.flow_m3hm2 === "number" ? each.flow_m3hm2 : 0), 0);
  const rain = aCase.exposure.site.rain?.leakShare ?? 0;
  const peak = Math.max(6, 15 + 1.2 * (roomDewPoint_C(21, humidity) - face) + 30 * leak + 200 * rain);
  const months = (value: number): number[] => new Array<number>(12).fill(value);
  return {
    caseHash: "",
    option: aCase.option,
    path: aCase.path,
    status: "finished",
    failure: null,
    plane,
    faceTemperature_C: months(face),
    faceHumidity: months(0.8),
    woodMoisture_percent: months(peak - 3),
    coldestMonth: { month: 0, temperature_C: face },
    peakMoisture_percent: peak,
    leastMoisture_percent: 8,
    peakFaceMoisture_percent: peak + 2,
    thirtyDayHumidity: Math.min(1, 0.6 + peak / 80),
    sevenDayHumidity: Math.min(1, 0.62 + peak / 80),
    hoursAbove80: 0,
    hoursAbove95: 0,
    liningSevenDayHumidity: 0.6,
    liningHoursAbove95: 0,
    mouldIndex: null,
    heatFromRoom_MJm2: 100,
    sheathingBudget: null,
    wallBudget: null,
    dryingTimes: [20, 16].map((threshold_percent) => ({
      layer: plane.wood ?? "",
      threshold_percent,
      first_days: 100 - threshold_percent,
      lasting_days: null,
    })),
    findings: [finding("woodMoisture", peak, 20), finding("condensate", Math.min(100, 60 + peak), 95)],
    endWater_kgm3: {},
    waterClosure: 0,
    heatClosure: 0,
    seconds: 0,
  };
}
