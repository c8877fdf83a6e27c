import type { CatalogueRow } from "./catalogue-row.ts";
import type { Material } from "./material.ts";
import type { PassportProperty } from "./passport.ts";

type Say = (property: PassportProperty, unit: string, note: string) => void;

/** Free water held between water-repellent fibres before it runs down, as a share of the volume [-]. ASSUMED: numerical room for condensate. */
const fibreHold = 0.1;
/** Largest water absorption by volume that the product standards allow for foams [-] (ASTM C578: 2 to 4 % for moulded boards; CAN/ULC S705.1: 4 %). */
const foamHold = 0.04;
/** A solid that takes up no water still needs a storage that is not flat [kg/m3 per unit of relative humidity]. */
const leastSlope_kgm3 = 0.01;

const foams = new Set([
  "eps_i",
  "eps_ii",
  "gps",
  "xps",
  "pir_foil",
  "pir_glass",
  "pir_core",
  "insul_sheath_pir",
  "phenolic",
  "ccspf",
  "ocspf",
  "cellular_glass",
]);
const repellentFibres = new Set([
  "glass_fibre_batt",
  "glass_fibre_hd",
  "stone_wool_batt",
  "stone_wool_board",
  "glass_fibre_board",
]);
const tight = new Set(["vinyl_sheet", "metal_siding", "cellular_glass"]);

/** w = 0.01 rho phi/(1.1 - phi): the placeholder of a material that hardly takes up water, on the humidities of the catalogue. */
function placeholder(density_kgm3: number): [number, number][] {
  return [0.3, 0.5, 0.65, 0.8, 0.9, 0.95, 0.98].map((phi) => [phi, (0.01 * density_kgm3 * phi) / (1.1 - phi)]);
}

/**
 * Fills what a catalogue row leaves blank. Every rule is stamped ASSUMED with its own sentence, so that a card can show it.
 * Source of the rules: common practice, no source, except where a sentence names one.
 */
export function settleBlanks(row: CatalogueRow, material: Material, say: Say): void {
  if (material.kind === "membrane") {
    if (row.id === "vinyl_siding_vent") {
      material.thermalResistance_m2KW = 0.11;
      say("thermalResistance", "m2 K/W", "Hollow-backed siding about 0.11 m2 K/W, from memory.");
    }
    return;
  }
  if (material.kind === "air") return;
  const density = material.density_kgm3 ?? 0;
  const porosity = row.porosity?.value ?? 0;

  if (tight.has(row.id)) {
    material.sorption = { slope_kgm3: leastSlope_kgm3 };
    material.freeSaturation_kgm3 = 2 * leastSlope_kgm3;
    say("sorption", "kg/m3", "Takes up no water; a slope of 0.01 kg/m3 keeps the arithmetic regular.");
    say("freeSaturation", "kg/m3", "Takes up no water.");
  } else if (!material.sorption) {
    material.sorption = { relativeHumidity: placeholder(density) };
    say(
      "sorption",
      "kg/m3",
      "Not known; placeholder w = 0.01 x density x RH/(1.1 - RH) for a material that hardly takes up water.",
    );
  }

  if (material.freeSaturation_kgm3 === undefined) {
    const [value, note] =
      row.id === "gypsum_glassmat"
        ? [500 * porosity, "Half of the pore volume, a placeholder for a water-repellent core."]
        : foams.has(row.id)
          ? [1000 * foamHold, "4 % by volume, the upper limit of water absorption in ASTM C578 and CAN/ULC S705.1."]
          : repellentFibres.has(row.id)
            ? [1000 * fibreHold, "10 % by volume: drops held between water-repellent fibres before they run down."]
            : material.wood
              ? [800 * porosity, "0.8 of the pore volume, the rule used for wood and panels."]
              : [720 * porosity, "0.72 of the pore volume, the rule used for mineral and porous materials."];
    material.freeSaturation_kgm3 = value;
    say("freeSaturation", "kg/m3", note);
  }

  if (!row.conductivityByTemperature)
    say(
      "conductivityByTemperature",
      "",
      "Taken as independent of temperature; masonry and gypsum 0 to 0.1 % per K in practice.",
    );
  if (!row.conductivityByWater && material.conductivity_WmK && typeof material.conductivity_WmK !== "number") {
    if (row.id.startsWith("sandstone") || row.id.startsWith("limestone")) {
      material.conductivity_WmK.expPsi = 4;
      say("conductivityByWater", "", "Masonry: factor exp(4 psi), the low end of the 4 to 10 in use.");
    } else if (porosity > 0) {
      material.conductivity_WmK.perWater = 5.75e-4;
      say("conductivityByWater", "", "Mineral board: water in place of air in parallel, 5.75e-4 W/(m K) per kg/m3.");
    }
  }

  if (!material.liquid) {
    material.liquid = { absorption_kgm2s05: 0 };
    say("liquid", "kg/(m2 s^0.5)", "Not known; no liquid transport.");
  }
}
