import type { Confidence } from "./catalogue-row.ts";
import type { Flag, Material } from "./material.ts";

/** Where one property of a catalogue material comes from. */
export interface Passport {
  readonly flag: Flag;
  /** Published or believed spread, as printed, in the unit of `unit`. */
  readonly range: string | null;
  readonly unit: string;
  readonly sources: readonly string[];
  readonly note: string;
  readonly confidence: Confidence;
}

export const passportProperties = [
  "density",
  "heatCapacity",
  "conductivity",
  "conductivityByTemperature",
  "conductivityByWater",
  "porosity",
  "sorption",
  "freeSaturation",
  "vapour",
  "liquid",
  "thermalResistance",
  "airChanges",
] as const;
export type PassportProperty = (typeof passportProperties)[number];

/** What stands in the catalogue: a material, and for each figure where it comes from. */
export interface CatalogueEntry {
  readonly group: string;
  /** Thicknesses sold [m]; empty for membranes and coatings. */
  readonly stock_m: readonly number[];
  readonly confidence: Confidence;
  readonly note: string;
  readonly passport: Readonly<Partial<Record<PassportProperty, Passport>>>;
  /** Usual air changes of a ventilated space [1/h]; null for others. */
  readonly usualAirChangesPerHour: number | null;
}
export type CatalogueMaterial = Material & CatalogueEntry;
