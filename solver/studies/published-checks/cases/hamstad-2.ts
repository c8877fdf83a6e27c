import type { Material } from "../../../materials/index.ts";
import type { LabFace } from "../../../model/index.ts";
import { hamstadPhysics } from "../benchmark-materials.ts";
import { slabTwoFaces } from "../closed-forms/conduction.ts";
import { labProject } from "../lab-project.ts";
import { bookRows, checkRow, stateAt, type Place, type PublishedCheck } from "../published-check.ts";

const thickness_m = 0.2;
const temperature_C = 20;
const D_m2s = 6e-10;
const saturation_kgm3 = 116;
/** w = 116/(1 - ln(phi)/0.118)^0.869 [kg/m3]. */
const water = (phi: number): number => saturation_kgm3 / (1 - Math.log(phi) / 0.118) ** 0.869;
const [start, outer, inner] = [water(0.95), water(0.45), water(0.65)];

/** The curve as one suction term: at a fixed temperature -ln(phi) is s/(rho_w R_v T). */
const layer: Material = {
  id: "isothermal-layer",
  name: "Layer of HAMSTAD No. 2",
  kind: "bulk",
  density_kgm3: 525,
  heatCapacity_JkgK: 800,
  conductivity_WmK: 0.15,
  freeSaturation_kgm3: saturation_kgm3,
  sorption: {
    saturation_kgm3,
    suctionTerms: [{ share: 1, scale_perPa: 1 / (0.118 * 1000 * 462 * (273.15 + temperature_C)), n: 1, m: 0.869 }],
  },
  vapour: { permeability_kgmsPa: 1e-15 },
  liquid: { diffusivity_m2s: D_m2s },
};
const face = (relativeHumidity: number): LabFace => ({
  temperature_C,
  relativeHumidity,
  heatFilm_Wm2K: 25,
  vapourFilm_kgm2sPa: 1e-3,
});
const hours = [100, 300, 1000];
const depths_m = [0, 0.005, 0.01, 0.02, 0.03, 0.05, 0.08, 0.1, 0.12, 0.15, 0.17, 0.18, 0.19, 0.195, 0.2];
const place = (depth_m: number): Place =>
  depth_m === 0
    ? { layer: "layer", side: "outside" }
    : depth_m === thickness_m
      ? { layer: "layer", side: "inside" }
      : { depth_m };

export const hamstad2Check: PublishedCheck = {
  id: "hamstad-2",
  title: "Isothermal drying with an analytical answer",
  source:
    "HAMSTAD WP2 benchmark No. 2, Hagentoft (2002), report R-02:8; numbers from memory, answer by the sine series",
  flag: "COMPUTED",
  compares: `Water content at ${depths_m.length} depths after 100, 300 and 1000 h`,
  tolerance:
    "0.65 kg/m3, 1 % of the difference between start and drier face, on the default grid; a tenth of it on a fine one.",
  slow: false,
  project: () =>
    labProject({
      name: "Isothermal drying with an analytical answer",
      materials: [layer],
      layers: [{ id: "layer", material: layer.id, thickness_m }],
      outside: face(0.45),
      inside: face(0.65),
      physics: { ...hamstadPhysics, heat: false },
      duration_h: 1000,
      initialTemperature_C: temperature_C,
      initialRelativeHumidity: 0.95,
      depths_m: depths_m.filter((depth_m) => depth_m > 0 && depth_m < thickness_m),
    }),
  compare: ([result]) => [
    ...hours.flatMap((hour) =>
      depths_m.map((depth_m) =>
        checkRow(
          `Water after ${hour} h at ${depth_m * 1000} mm`,
          "kg/m3",
          slabTwoFaces(depth_m, hour * 3600, D_m2s, thickness_m, start, outer, inner),
          stateAt(result!, place(depth_m), hour).w_kgm3,
          0.01 * (start - outer),
        ),
      ),
    ),
    ...bookRows(result!, { heat: false, water: true }),
  ],
};
