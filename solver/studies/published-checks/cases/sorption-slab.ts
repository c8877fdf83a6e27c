import type { Material } from "../../../materials/index.ts";
import type { LabFace } from "../../../model/index.ts";
import { slabTwoFaces } from "../closed-forms/conduction.ts";
import { slabUptakeShare } from "../closed-forms/sorption.ts";
import { labProject } from "../lab-project.ts";
import { bookRows, checkRow, stateAt, type PublishedCheck } from "../published-check.ts";

const thickness_m = 0.02;
const slope_kgm3 = 60;
const permeability_kgmsPa = 1.2e-11;
const saturation_Pa = 2339;
/** Temperature at which 610.5 exp(17.269 t/(237.3 + t)) is 2339 Pa [degC]: 20.014. */
const logarithm = Math.log(saturation_Pa / 610.5);
const temperature_C = (237.3 * logarithm) / (17.269 - logarithm);
const D_m2s = (permeability_kgmsPa * saturation_Pa) / slope_kgm3;
const [from, to] = [0.5, 0.8];

const board: Material = {
  id: "straight-sorption",
  name: "Board with a straight sorption line",
  kind: "bulk",
  density_kgm3: 600,
  heatCapacity_JkgK: 1500,
  conductivity_WmK: 0.13,
  sorption: { slope_kgm3 },
  vapour: { permeability_kgmsPa },
};
const face: LabFace = { temperature_C, relativeHumidity: to, heatFilm_Wm2K: "held", vapourFilm_kgm2sPa: "held" };
const hours = [1, 6, 24, 72, 240];
const depths_m = [0.0025, 0.01];

export const sorptionSlabCheck: PublishedCheck = {
  id: "sorption-slab",
  title: "Board that takes up moisture from both faces",
  source: "Sorption of a plane sheet; Crank, The Mathematics of Diffusion (1975), 4.3",
  flag: "COMPUTED",
  compares: "RH at two depths and the water taken up after 1 h to 10 days",
  tolerance: "0.15 % RH and 0.0018 kg/m2: half a percent of the step of 30 % RH and of the final uptake of 0.36 kg/m2.",
  slow: false,
  project: () =>
    labProject({
      name: "Board that takes up moisture from both faces",
      materials: [board],
      layers: [{ id: "board", material: board.id, thickness_m }],
      outside: face,
      inside: face,
      physics: { heat: false, saturationPressure: "iso13788" },
      duration_h: 240,
      initialTemperature_C: temperature_C,
      initialRelativeHumidity: from,
      depths_m,
    }),
  compare: ([result]) => [
    ...hours.flatMap((hour) => [
      ...depths_m.map((depth_m) =>
        checkRow(
          `RH after ${hour} h at ${depth_m * 1000} mm`,
          "%",
          100 * slabTwoFaces(depth_m, hour * 3600, D_m2s, thickness_m, from, to, to),
          100 * stateAt(result!, { depth_m }, hour).RH,
          0.15,
        ),
      ),
      checkRow(
        `Uptake after ${hour} h`,
        "kg/m2",
        slope_kgm3 * thickness_m * (to - from) * slabUptakeShare(hour * 3600, D_m2s, thickness_m),
        thickness_m * (stateAt(result!, { mean: "board" }, hour).w_kgm3 - slope_kgm3 * from),
        0.0018,
      ),
    ]),
    ...bookRows(result!, { heat: false, water: true }),
  ],
};
