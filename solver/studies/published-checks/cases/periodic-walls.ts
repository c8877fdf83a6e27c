import type { Material } from "../../../materials/index.ts";
import type { Project } from "../../../model/index.ts";
import type { RunResult } from "../../../run/index.ts";
import { periodicResponse, type PeriodicLayer } from "../closed-forms/periodic.ts";
import { conductionOnly, conductor, labProject, sampled } from "../lab-project.ts";
import { bookRows, checkRow, stateAt, type CheckRow, type PublishedCheck } from "../published-check.ts";

const insideFilm_m2KW = 0.13;
const outsideFilm_m2KW = 0.04;
const swing_K = 10;

const concrete = conductor("plain-concrete", "Concrete", 1.8, 2400, 1000);
const gypsum = conductor("plain-gypsum", "Gypsum board", 0.25, 900, 1000);
const fibre = conductor("plain-fibre", "Fibre", 0.036, 30, 850);
const panel = conductor("plain-panel", "Wood panel", 0.13, 650, 1600);
const foam = conductor("plain-foam", "Foam", 0.035, 20, 1450);

interface Slab {
  readonly material: Material;
  readonly thickness_m: number;
}
/** Inside first. */
const frame: readonly Slab[] = [
  { material: gypsum, thickness_m: 0.0125 },
  { material: fibre, thickness_m: 0.14 },
  { material: panel, thickness_m: 0.011 },
];
const walls = {
  concrete: { title: "Concrete wall", slabs: [{ material: concrete, thickness_m: 0.2 }] },
  frame: { title: "Frame wall", slabs: frame },
  "frame-and-foam": { title: "Frame wall with foam outside", slabs: [...frame, { material: foam, thickness_m: 0.05 }] },
} as const;

const periodicLayers = (slabs: readonly Slab[]): PeriodicLayer[] =>
  slabs.map(({ material, thickness_m }) => ({
    thickness_m,
    conductivity_WmK: material.conductivity_WmK as number,
    volumetricHeatCapacity_Jm3K: material.density_kgm3! * material.heatCapacity_JkgK!,
  }));

/** A period, how finely its sine is tabled (amplitude right to 2e-4), and how long until a wall has forgotten its start. */
const periods = {
  day: { hours: 24, step_s: 600, settling_h: 10 * 24, words: "a day" },
  year: { hours: 8760, step_s: 86400, settling_h: 30 * 24, words: "a year" },
} as const;

type Period = (typeof periods)[keyof typeof periods];
type Side = "outside" | "inside";

/** Temperature of the swinging air; a cosine whose period ends with the run. */
const swing = (period: Period, time_s: number): number =>
  swing_K * Math.cos((2 * Math.PI * (time_s / 3600 - period.settling_h)) / period.hours);

function swungProject(title: string, slabs: readonly Slab[], side: Side, period: Period): Project {
  const duration_h = period.settling_h + period.hours;
  const course = sampled(duration_h, period.step_s, (t) => swing(period, t));
  return labProject({
    name: title,
    materials: slabs.map(({ material }) => material),
    layers: slabs
      .toReversed()
      .map(({ material, thickness_m }) => ({ id: material.id, material: material.id, thickness_m })),
    outside: {
      temperature_C: side === "outside" ? course : 0,
      heatFilm_Wm2K: 1 / outsideFilm_m2KW,
      vapourFilm_kgm2sPa: 0,
    },
    inside: {
      temperature_C: side === "inside" ? course : 0,
      heatFilm_Wm2K: 1 / insideFilm_m2KW,
      vapourFilm_kgm2sPa: 0,
    },
    physics: conductionOnly,
    duration_h,
    initialTemperature_C: 0,
  });
}

/** Amplitude [W/(m2 K)] and lead [h] of a heat flow through a face, per kelvin of the swing, over the last period. */
function response(result: RunResult, period: Period, swinging: Side, at: Side, layer: string) {
  let re = 0;
  let im = 0;
  const film = at === "inside" ? insideFilm_m2KW : outsideFilm_m2KW;
  for (let k = 1; k <= period.hours; k += 1) {
    const hour = period.settling_h + k;
    const air = swinging === at ? swing(period, hour * 3600) : 0;
    const intoWall = (air - stateAt(result, { layer, side: at }, hour).T_C) / film;
    // Through the wall the flow counts as it leaves it.
    const flow = swinging === at ? intoWall : -intoWall;
    const angle = (2 * Math.PI * k) / period.hours;
    re += flow * Math.cos(angle);
    im -= flow * Math.sin(angle);
  }
  const scale = 2 / (period.hours * swing_K);
  return { amplitude: Math.hypot(re, im) * scale, lead_h: (Math.atan2(im, re) * period.hours) / (2 * Math.PI) };
}

function periodicCheck(wallId: keyof typeof walls, side: Side, period: Period): PublishedCheck {
  const { title, slabs } = walls[wallId];
  const exact = periodicResponse(periodicLayers(slabs), insideFilm_m2KW, outsideFilm_m2KW, period.hours * 3600);
  const [innerLayer, outerLayer] = [slabs[0].material.id, slabs.at(-1)!.material.id];
  const name = `${title}, ${side} air swings over ${period.words}`;
  return {
    id: `periodic-${wallId}-${side}-${period.hours}h`,
    title: name,
    source: "Heat transfer matrices of ISO 13786:2017",
    flag: "COMPUTED",
    compares: "Periodic transmittance, decrement factor, admittance and their time shifts, once the swing repeats",
    tolerance:
      "1 % of each amplitude, 0.1 h of each time shift: the accuracy to which the standard's quantities are used.",
    slow: period.hours > 24,
    project: () => swungProject(name, slabs, side, period),
    compare: ([result]) => {
      const other = side === "outside" ? "inside" : "outside";
      const through = response(result!, period, side, other, other === "inside" ? innerLayer : outerLayer);
      const own = response(result!, period, side, side, side === "inside" ? innerLayer : outerLayer);
      const admittance = side === "inside" ? exact.insideAdmittance_Wm2K : exact.outsideAdmittance_Wm2K;
      const lead = side === "inside" ? exact.insideShift_h : exact.outsideShift_h;
      const rows: CheckRow[] = [
        checkRow(
          "Periodic transmittance",
          "W/(m2 K)",
          exact.transmittance_Wm2K,
          through.amplitude,
          0.01 * exact.transmittance_Wm2K,
        ),
        checkRow("Decrement factor", "-", exact.decrement, through.amplitude / exact.U_Wm2K, 0.01 * exact.decrement),
        checkRow("Time shift through the wall", "h", exact.transmittanceShift_h, through.lead_h, 0.1),
        checkRow(`Admittance of the ${side} face`, "W/(m2 K)", admittance, own.amplitude, 0.01 * admittance),
        checkRow(`Time shift of the ${side} face`, "h", lead, own.lead_h, 0.1),
      ];
      return [...rows, ...bookRows(result!, { heat: true, water: false })];
    },
  };
}

export const periodicChecks: readonly PublishedCheck[] = [
  periodicCheck("concrete", "outside", periods.day),
  periodicCheck("concrete", "inside", periods.day),
  periodicCheck("frame", "outside", periods.day),
  periodicCheck("frame", "inside", periods.day),
  periodicCheck("frame-and-foam", "outside", periods.day),
  periodicCheck("frame-and-foam", "inside", periods.day),
  periodicCheck("frame", "outside", periods.year),
];
