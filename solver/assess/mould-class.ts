import type { Material } from "../materials/index.ts";
import type { MouldClass } from "./mould-index.ts";

const classes: readonly MouldClass[] = ["verySensitive", "sensitive", "mediumResistant", "resistant"];

/**
 * The class a surface is judged in. A `mouldClass` of the material itself wins; else wood, panels and paper faces are sensitive,
 * untreated sawn sapwood very sensitive, fibres, masonry and plaster medium, foams, metal and films resistant.
 * Source: examples named by ANSI/ASHRAE 160 and Ojanen et al. 2010 (MEMORY); which material sits where is a judgement.
 */
export function mouldClassOf(material: Material): MouldClass {
  const own: unknown = (material as Readonly<Record<string, unknown>>)["mouldClass"];
  const named = classes.find((one) => one === own);
  if (named) return named;
  const words = `${material.id} ${material.name} ${material.group ?? ""}`.toLowerCase();
  if (/sapwood/.test(words)) return "verySensitive";
  if (material.wood === true || /paper|gypsum board|kraft|cellulose|straw/.test(words)) return "sensitive";
  if (/foam|foil|metal|vinyl|poly|glass-?mat|glassmat|steel|alu/.test(words)) return "resistant";
  return material.kind === "bulk" ? "mediumResistant" : "resistant";
}

export const mouldClassWords: Readonly<Record<MouldClass, string>> = {
  verySensitive: "very sensitive",
  sensitive: "sensitive",
  mediumResistant: "medium resistant",
  resistant: "resistant",
};
