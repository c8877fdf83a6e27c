import { materialById } from "../materials/index.ts";
import type { Passport, PassportProperty } from "../materials/index.ts";
import type { Case, CaseLayer } from "../model/index.ts";
import { steadyLayersOf } from "../physics/steady/index.ts";
import { inSentence } from "./wording.ts";

/** What a finding depends on most. */
export type Sway = "moisture" | "temperature" | "rain" | "none";

const words: Readonly<Partial<Record<PassportProperty, string>>> = {
  vapour: "vapour permeability",
  sorption: "sorption curve",
  liquid: "water absorption",
  freeSaturation: "free saturation",
  conductivity: "conductivity",
  thermalResistance: "thermal resistance",
  airChanges: "air changes",
};
const mostNamed = 4;

/** A passport from the case itself, else from the catalogue row of that id; a material of the user's own has none. */
function passportOf(layer: CaseLayer): Readonly<Partial<Record<PassportProperty, Passport>>> | null {
  const own: unknown = (layer.material as Readonly<Record<string, unknown>>)["passport"];
  if (typeof own === "object" && own !== null) return own;
  const row = materialById(layer.material.id);
  return row && row.name === layer.material.name ? row.passport : null;
}

/** Why a figure is weak, or null if it is not: recalled, assumed, or a row of low confidence. */
function weakness(passport: Passport | undefined): string | null {
  if (!passport) return null;
  if (passport.flag === "MEMORY") return "recalled";
  if (passport.flag === "ASSUMED") return "assumed";
  return passport.confidence === "C" ? "low confidence" : null;
}

/** The weakly known inputs behind a finding on this layer, the most resistant layers first: "OSB sheathing: vapour permeability (recalled)". */
export function swayedBy(aCase: Case, layerId: string, sway: Sway): readonly string[] {
  if (sway === "none") return [];
  const steady = new Map(steadyLayersOf(aCase.layers).layers.map((layer) => [layer.id, layer]));
  const found: { readonly weight: number; readonly text: string }[] = [];
  const name = (layer: CaseLayer, property: PassportProperty, weight: number): void => {
    const passport = passportOf(layer)?.[property];
    const why = weakness(passport);
    if (why === null) return;
    const range = passport?.range ? `, ${passport.range}` : "";
    found.push({ weight, text: `${inSentence(layer.name)}: ${words[property] ?? property} (${why}${range})` });
  };
  const totalSd_m = [...steady.values()].reduce((sum, layer) => sum + layer.sd_m, 0) || 1;
  const totalR = [...steady.values()].reduce((sum, layer) => sum + layer.resistance_m2KW, 0) || 1;
  for (const layer of aCase.layers) {
    const here = steady.get(layer.id);
    const governs = layer.id === layerId;
    if (sway !== "temperature" && here) name(layer, "vapour", here.sd_m / totalSd_m + (governs ? 0.5 : 0));
    if (sway !== "temperature" && governs) name(layer, "sorption", 0.45);
    if (sway === "rain") {
      name(layer, "liquid", governs ? 0.9 : 0.2);
      if (governs) name(layer, "freeSaturation", 0.6);
    }
    if (sway === "temperature" && here) {
      name(layer, layer.material.kind === "bulk" ? "conductivity" : "thermalResistance", here.resistance_m2KW / totalR);
    }
    if (sway !== "temperature" && layer.airChangesPerHour !== null) name(layer, "airChanges", 0.3);
  }
  return found
    .filter((one) => one.weight >= 0.05)
    .sort((a, b) => b.weight - a.weight)
    .slice(0, mostNamed)
    .map((one) => one.text);
}
