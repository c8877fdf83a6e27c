import type { Flag } from "./material.ts";
import type { SourceKey } from "./sources.ts";

/** How well a row is known: A most figures read, B a mixture, C mostly recalled. */
export type Confidence = "A" | "B" | "C";

/** One published, computed or recalled number with the spread that belongs to it. */
export interface Figure {
  readonly value: number;
  /** Published or believed spread, as printed; not a standard deviation. */
  readonly range?: string;
  readonly flag: Flag;
}

/** Relative humidities of the sorption columns [-]. */
export const sorptionGrid = [0.3, 0.5, 0.65, 0.8, 0.9, 0.95, 0.98] as const;

/**
 * A row of the catalogue as it was collected, in the units of its sources. A missing field was not known;
 * material-of-row.ts settles it by a stated rule and flags it ASSUMED.
 */
export interface CatalogueRow {
  readonly id: string;
  readonly name: string;
  readonly layer: "bulk" | "membrane" | "coating" | "air" | "ventilatedAir";
  /** Thicknesses sold; the first is the one at which a whole-board permeance was taken. */
  readonly stock_mm: readonly number[];
  /** Oven-dry; wood: dry mass over volume at 12 % moisture content. */
  readonly density_kgm3?: Figure;
  readonly heatCapacity_JkgK?: Figure;
  /** Dry, at the mean temperature `at_C`. */
  readonly conductivity_WmK?: Figure & { readonly at_C: number };
  readonly conductivityByTemperature?: { readonly flag: Flag } & (
    | { readonly perKelvin: number }
    | { readonly at_C: readonly number[]; readonly conductivity: readonly number[] }
    | { readonly airSpace: true }
  );
  readonly conductivityByWater?: { readonly flag: Flag } & (
    | { readonly none: true }
    /** Factor exp(expPsi w/1000). */
    | { readonly expPsi: number }
    /** W/(m K) per kg/m3 of water, up to a moisture content by mass if given. */
    | { readonly perKgm3: number; readonly upToMassShare?: number }
    /** Relative rise per kg of water per kg of dry material. */
    | { readonly perMassShare: number }
    | { readonly massShare: readonly number[]; readonly conductivity: readonly number[] }
  );
  readonly porosity?: Figure;
  /** Moisture content [kg/m3] at the humidities of `sorptionGrid`. */
  readonly sorption_kgm3?: { readonly at: readonly number[]; readonly flag: Flag };
  readonly freeSaturation_kgm3?: Figure;
  /** Vapour resistance factor at mean relative humidities of the cup test. */
  readonly resistanceFactor?: {
    readonly meanRH: readonly number[];
    readonly mu: readonly number[];
    readonly range?: string;
    readonly flag: Flag;
  };
  /** Permeance of the whole layer [ng/(Pa s m2)], where a facer or film governs. */
  readonly permeance_ng?: {
    readonly meanRH: readonly number[];
    readonly permeance: readonly number[];
    readonly range?: string;
    readonly flag: Flag;
  };
  readonly absorption_kgm2s05?: Figure;
  /** Usual air changes of a ventilated space [1/h]. */
  readonly airChangesPerHour?: Figure;
  readonly confidence: Confidence;
  readonly sources: readonly SourceKey[];
  readonly note: string;
}
