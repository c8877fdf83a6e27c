import type { Material } from "../../../materials/index.ts";
import { capillaryUptake, type UptakeSolution } from "../closed-forms/capillary-uptake.ts";
import { labProject } from "../lab-project.ts";
import { bookRows, checkRow, stateAt, type PublishedCheck } from "../published-check.ts";

const A = 0.02;
const saturation_kgm3 = 200;
const start_kgm3 = 2;
const thickness_m = 0.2;
/** Künzel (1995): D = 3.8 (A/w_f)^2 1000^(w/w_f - 1) [m2/s]. */
const D = (w: number): number => 3.8 * (A / saturation_kgm3) ** 2 * 1000 ** (w / saturation_kgm3 - 1);

/** The uptake of a diffusivity D(w) does not depend on the retention curve; this one is dry at 93 % RH and full at some kPa. */
const stone: Material = {
  id: "thirsty-stone",
  name: "Stone that draws water",
  kind: "bulk",
  density_kgm3: 1800,
  heatCapacity_JkgK: 850,
  conductivity_WmK: 0.8,
  freeSaturation_kgm3: saturation_kgm3,
  sorption: { saturation_kgm3, suctionTerms: [{ share: 1, scale_perPa: 1e-5, n: 2, m: 0.5 }] },
  vapour: { permeability_kgmsPa: 0 },
  liquid: { absorption_kgm2s05: A },
};

const hours = [1, 4, 24];
/** Depth over the root of time [m/s^0.5] of the points compared, behind the face and up to the front. */
const depths_m = [0.002, 0.005, 0.01, 0.015, 0.02, 0.03, 0.04, 0.06];
/** Water within this share of the way to the front is compared; ahead of it the profile falls within a hair's breadth. */
const compared = 0.9;

let known: UptakeSolution | undefined;
const solution = (): UptakeSolution => (known ??= capillaryUptake(D, start_kgm3, saturation_kgm3));

export const capillaryUptakeCheck: PublishedCheck = {
  id: "capillary-uptake",
  title: "Stone that stands in water",
  source: "Relation of D_w to A by Künzel (1995); its answer by the similarity solution of Philip (1957)",
  flag: "COMPUTED",
  compares: "Uptake against the root of time, its exponent, and water content behind the wetting front",
  tolerance:
    "Uptake 2 %, exponent 0.500 within 0.005, water content 2 % of saturation behind the front; the front itself is steeper than any grid.",
  slow: false,
  project: () =>
    labProject({
      name: "Stone that stands in water",
      materials: [stone],
      layers: [{ id: "stone", material: stone.id, thickness_m, initial: { water_kgm3: start_kgm3 } }],
      outside: { temperature_C: 20, suction_Pa: 0, heatFilm_Wm2K: "held", vapourFilm_kgm2sPa: "held" },
      inside: { temperature_C: 20, heatFilm_Wm2K: 0, vapourFilm_kgm2sPa: 0 },
      physics: { heat: false },
      duration_h: 24,
      initialTemperature_C: 20,
      depths_m,
    }),
  compare: ([result]) => {
    const { sorptivity, waterAt } = solution();
    const uptake = (hour: number): number =>
      thickness_m * (stateAt(result!, { mean: "stone" }, hour).w_kgm3 - start_kgm3);
    const behindFront = (depth_m: number, hour: number): boolean =>
      waterAt(depth_m / Math.sqrt(hour * 3600) / compared) > start_kgm3 + 1;
    return [
      ...hours.map((hour) => {
        const expected = sorptivity * Math.sqrt(hour * 3600);
        return checkRow(`Uptake after ${hour} h`, "kg/m2", expected, uptake(hour), 0.02 * expected);
      }),
      checkRow(
        "Exponent of uptake over time, 1 to 24 h",
        "-",
        0.5,
        Math.log(uptake(24) / uptake(1)) / Math.log(24),
        0.005,
      ),
      ...hours.flatMap((hour) =>
        depths_m
          .filter((depth_m) => behindFront(depth_m, hour))
          .map((depth_m) =>
            checkRow(
              `Water after ${hour} h at ${depth_m * 1000} mm`,
              "kg/m3",
              waterAt(depth_m / Math.sqrt(hour * 3600)),
              stateAt(result!, { depth_m }, hour).w_kgm3,
              0.02 * saturation_kgm3,
            ),
          ),
      ),
      ...bookRows(result!, { heat: false, water: true }),
    ];
  },
};
