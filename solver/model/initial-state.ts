import type { Material } from "../materials/index.ts";
import type { CaseLayer } from "./case.ts";
import type { Layer, RunSettings } from "./project.ts";

/** Start humidities by name of state [-]. "delivered": ANSI/ASHRAE 160 design inputs, EMC at 80 %, concrete and wet trades 90 % (MEMORY). */
const dry = 0.5;
const delivered = 0.8;
const wetTrades = 0.9;
/** Wood sheathing after rain during framing, % by mass: common practice, no source. */
const rainedOn_percent = 25;

const isMasonry = (material: Material): boolean =>
  material.group === "Masonry" || /concrete|masonry|brick|mortar|stucco|plaster|stone|hemp-lime/i.test(material.name);
const isSheathing = (material: Material): boolean =>
  material.wood === true &&
  (material.group === "Sheathing" || /sheathing|plywood|OSB|strand board/i.test(material.name));

/**
 * Start state of one layer: its own figure, else the run's state by name. Moisture content by mass becomes kg/m3 with the dry density.
 * "dry" is in balance with 50 % RH; "delivered" with 80 %, masonry and plaster with 90 %; "rainedOn" as delivered with wood sheathing at 25 % by mass.
 */
export function initialOf(layer: Layer, material: Material, run: RunSettings): CaseLayer["initial"] {
  const own = layer.initial;
  if (own) {
    if ("relativeHumidity" in own) return { relativeHumidity: own.relativeHumidity as number };
    if ("water_kgm3" in own) return { water_kgm3: own.water_kgm3 as number };
    return { water_kgm3: (own.moistureContent_percent / 100) * (material.density_kgm3 ?? 0) };
  }
  if (typeof run.initial === "object") return { relativeHumidity: run.initial.relativeHumidity };
  if (run.initial === "dry") return { relativeHumidity: dry };
  if (run.initial === "rainedOn" && isSheathing(material) && material.density_kgm3)
    return { water_kgm3: (rainedOn_percent / 100) * material.density_kgm3 };
  return { relativeHumidity: isMasonry(material) && material.kind === "bulk" ? wetTrades : delivered };
}
