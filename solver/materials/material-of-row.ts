import { settleBlanks } from "./blank-rules.ts";
import { sorptionGrid, type CatalogueRow } from "./catalogue-row.ts";
import type { Conductivity, Flag, Material } from "./material.ts";
import type { CatalogueMaterial, Passport, PassportProperty } from "./passport.ts";
import { sources } from "./sources.ts";
import { massOfWood } from "./wood-moisture.ts";

/** Permeability of still air at 23 degC and 101325 Pa [kg/(m s Pa)], Schirmer form; the basis on which permeances become factors. */
export const airPermeability23_kgmsPa = 1.953e-10;

const pairs = (x: readonly number[], y: readonly number[]): [number, number][] => x.map((value, i) => [value, y[i]!]);

function conductivityOf(row: CatalogueRow): Conductivity | undefined {
  if (!row.conductivity_WmK) return undefined;
  const dry = row.conductivity_WmK.value;
  const density = row.density_kgm3?.value ?? 1;
  const result: Exclude<Conductivity, number> = { dry_WmK: dry, reference_C: row.conductivity_WmK.at_C };
  const byTemperature = row.conductivityByTemperature;
  if (byTemperature && "perKelvin" in byTemperature) result.perKelvin = byTemperature.perKelvin;
  if (byTemperature && "at_C" in byTemperature)
    result.temperature_C = pairs(byTemperature.at_C, byTemperature.conductivity);
  const byWater = row.conductivityByWater;
  if (byWater && "expPsi" in byWater) result.expPsi = byWater.expPsi;
  if (byWater && "perKgm3" in byWater) {
    result.perWater = byWater.perKgm3;
    if (byWater.upToMassShare) result.perWaterUpTo_kgm3 = byWater.upToMassShare * density;
  }
  if (byWater && "perMassShare" in byWater) result.perWater = (dry * byWater.perMassShare) / density;
  if (byWater && "massShare" in byWater)
    result.moistureFactor = byWater.massShare.map((u, i) => [u * density, byWater.conductivity[i]! / dry]);
  return result;
}

/** Builds the material and its passport from a row; what the row leaves blank is settled by blank-rules.ts and says so. */
export function materialOfRow(row: CatalogueRow, group: string): CatalogueMaterial {
  const names = row.sources.map((key) => sources[key]);
  const passport: Partial<Record<PassportProperty, Passport>> = {};
  const stamp = (
    property: PassportProperty,
    unit: string,
    figure: { flag: Flag; range?: string } | undefined,
  ): void => {
    if (figure)
      passport[property] = {
        flag: figure.flag,
        range: figure.range ?? null,
        unit,
        sources: names,
        note: row.note,
        confidence: row.confidence,
      };
  };
  stamp("density", "kg/m3", row.density_kgm3);
  stamp("heatCapacity", "J/(kg K)", row.heatCapacity_JkgK);
  stamp("conductivity", "W/(m K)", row.conductivity_WmK);
  stamp("conductivityByTemperature", "", row.conductivityByTemperature);
  stamp("conductivityByWater", "", row.conductivityByWater);
  stamp("porosity", "m3/m3", row.porosity);
  stamp("sorption", "kg/m3", row.sorption_kgm3);
  stamp("freeSaturation", "kg/m3", row.freeSaturation_kgm3);
  stamp("vapour", row.permeance_ng ? "ng/(Pa s m2)" : "-", row.permeance_ng ?? row.resistanceFactor);
  stamp("liquid", "kg/(m2 s^0.5)", row.absorption_kgm2s05);
  stamp("airChanges", "1/h", row.airChangesPerHour);

  const material: Material = {
    id: row.id,
    name: row.name,
    kind: row.layer === "bulk" ? "bulk" : row.layer === "air" || row.layer === "ventilatedAir" ? "air" : "membrane",
    group,
  };
  if (row.permeance_ng)
    material.permeance_kgm2sPa = pairs(
      row.permeance_ng.meanRH,
      row.permeance_ng.permeance.map((ng) => ng * 1e-12),
    );
  if (row.resistanceFactor)
    material.vapour = { resistanceFactor: pairs(row.resistanceFactor.meanRH, row.resistanceFactor.mu) };
  if (material.kind !== "membrane") {
    if (row.density_kgm3) material.density_kgm3 = row.density_kgm3.value;
    if (row.heatCapacity_JkgK) material.heatCapacity_JkgK = row.heatCapacity_JkgK.value;
    if (row.porosity && row.porosity.value > 0) material.porosity = row.porosity.value;
  }
  if (material.kind === "bulk") {
    const conductivity = conductivityOf(row);
    if (conductivity) material.conductivity_WmK = conductivity;
    if (row.sorption_kgm3) material.sorption = { relativeHumidity: pairs(sorptionGrid, row.sorption_kgm3.at) };
    if (row.freeSaturation_kgm3) material.freeSaturation_kgm3 = row.freeSaturation_kgm3.value;
    if (row.absorption_kgm2s05) material.liquid = { absorption_kgm2s05: row.absorption_kgm2s05.value };
    if (massOfWood.has(row.id)) material.wood = true;
  }
  if (material.kind === "air" && row.conductivity_WmK) {
    // A space of still air holds vapour in proportion to humidity: 17.3 g/m3 saturated at 20 degC.
    material.sorption = { slope_kgm3: 0.01729 };
    material.thermalResistance_m2KW = row.stock_mm[0]! / 1000 / row.conductivity_WmK.value;
    passport.thermalResistance = { ...passport.conductivity!, unit: "m2 K/W", flag: "COMPUTED" };
  }
  settleBlanks(row, material, (property, unit, note) => {
    passport[property] = { flag: "ASSUMED", range: null, unit, sources: [], note, confidence: "C" };
  });
  return {
    ...material,
    group,
    stock_m: material.kind === "membrane" ? [] : row.stock_mm.map((mm) => mm / 1000),
    confidence: row.confidence,
    note: row.note,
    passport,
    usualAirChangesPerHour: row.layer === "ventilatedAir" ? (row.airChangesPerHour?.value ?? null) : null,
  };
}
