import { catalogue } from "./catalogue.ts";
import type { CatalogueMaterial } from "./passport.ts";

/** What people in the trade call a thing, and the words under which the catalogue has it. Common practice, no source. */
const synonyms: readonly (readonly [string, readonly string[]])[] = [
  ["drywall", ["gypsum board"]],
  ["plasterboard", ["gypsum board"]],
  ["wallboard", ["gypsum board"]],
  ["gyp", ["gypsum"]],
  ["strand board", ["osb"]],
  ["oriented strand board", ["osb"]],
  ["waferboard", ["osb"]],
  ["ply", ["plywood"]],
  ["polyiso", ["polyisocyanurate"]],
  ["iso board", ["polyisocyanurate"]],
  ["pir", ["polyisocyanurate"]],
  ["pur", ["polyurethane", "polyisocyanurate"]],
  ["xps", ["extruded polystyrene"]],
  ["bead board", ["expanded polystyrene"]],
  ["beadboard", ["expanded polystyrene"]],
  ["eps", ["expanded polystyrene"]],
  ["gps", ["graphite"]],
  ["rigid foam", ["polystyrene", "polyisocyanurate"]],
  ["foam board", ["polystyrene", "polyisocyanurate"]],
  ["ci", ["polystyrene", "polyisocyanurate", "rigid board"]],
  ["mineral wool", ["stone-wool", "glass-fibre"]],
  ["rock wool", ["stone-wool"]],
  ["stone wool", ["stone-wool"]],
  ["fiberglass", ["glass-fibre"]],
  ["fibreglass", ["glass-fibre"]],
  ["glass wool", ["glass-fibre"]],
  ["batt", ["batt"]],
  ["batts", ["batt"]],
  ["dense pack", ["dense-pack"]],
  ["blown in", ["loose fill", "dense-pack"]],
  ["ccspf", ["closed-cell"]],
  ["ocspf", ["open-cell"]],
  ["closed cell", ["closed-cell"]],
  ["open cell", ["open-cell"]],
  ["spray foam", ["spray polyurethane"]],
  ["spf lumber", ["spruce-pine-fir"]],
  ["2x4", ["framing lumber"]],
  ["2x6", ["framing lumber"]],
  ["stud", ["framing lumber"]],
  ["studs", ["framing lumber"]],
  ["framing", ["framing lumber"]],
  ["fir", ["douglas-fir", "spruce-pine-fir"]],
  ["clt", ["cross-laminated"]],
  ["block", ["concrete masonry unit", "concrete block"]],
  ["cmu", ["concrete masonry unit"]],
  ["cinder block", ["concrete masonry unit"]],
  ["brick", ["brick"]],
  ["stucco", ["stucco", "eifs"]],
  ["render", ["stucco", "lime plaster"]],
  ["clapboard", ["lap siding"]],
  ["siding", ["siding"]],
  ["cedar", ["cedar"]],
  ["shingles", ["cedar"]],
  ["hardboard", ["engineered wood siding"]],
  ["fiber cement", ["fibre-cement"]],
  ["fibre cement", ["fibre-cement"]],
  ["cement board", ["fibre-cement"]],
  ["wrb", ["housewrap", "building paper", "felt", "membrane"]],
  ["house wrap", ["housewrap"]],
  ["weather barrier", ["housewrap", "water-resistive"]],
  ["tar paper", ["felt"]],
  ["felt paper", ["felt"]],
  ["poly", ["polyethylene"]],
  ["vapor barrier", ["polyethylene", "vapour-retarder", "kraft"]],
  ["vapour barrier", ["polyethylene", "vapour-retarder", "kraft"]],
  ["vapor retarder", ["vapour-retarder", "kraft", "polyethylene"]],
  ["smart retarder", ["rh-dependent"]],
  ["smart membrane", ["rh-dependent"]],
  ["variable retarder", ["rh-dependent"]],
  ["kraft", ["kraft"]],
  ["peel and stick", ["self-adhered"]],
  ["flashing", ["self-adhered bituminous"]],
  ["liquid applied", ["fluid-applied"]],
  ["foil", ["foil"]],
  ["paint", ["paint"]],
  ["wallpaper", ["wall covering"]],
  ["air gap", ["cavity"]],
  ["air space", ["cavity"]],
  ["furring", ["strapping"]],
  ["rainscreen", ["rainscreen"]],
  ["straps", ["strapping"]],
  ["hempcrete", ["hemp-lime"]],
  ["fiberboard", ["fibreboard"]],
  ["glass mat", ["glass-mat"]],
  ["exterior gypsum", ["gypsum sheathing"]],
  ["plaster", ["plaster"]],
  ["cork", ["cork"]],
  ["foam glass", ["cellular glass"]],
  ["insulated sheathing", ["insulating sheathing"]],
];

const american: readonly (readonly [RegExp, string])[] = [
  [/fiber/g, "fibre"],
  [/vapor\b/g, "vapour"],
  [/aluminum/g, "aluminium"],
  [/\bmold/g, "mould"],
];

const plain = (text: string): string =>
  american.reduce((result, [from, to]) => result.replace(from, to), text.toLowerCase().trim());
const textOf = (material: CatalogueMaterial): string =>
  `${material.id.replace(/_/g, " ")} ${material.name} ${material.group}`.toLowerCase();
const searchable = catalogue.map((material) => ({
  material,
  text: textOf(material),
  words: new Set(textOf(material).split(/[^a-z0-9.]+/)),
}));

function worth(words: string, entry: (typeof searchable)[number]): number {
  if (entry.material.id === words || entry.material.id === words.replace(/ /g, "_")) return 1000;
  let score = 0;
  for (const word of words.split(/[^a-z0-9.]+/).filter(Boolean)) {
    if (entry.words.has(word)) score += 10;
    else if ([...entry.words].some((own) => own.startsWith(word))) score += 5;
    else if (word.length > 3 && entry.text.includes(word)) score += 2;
    else return 0;
  }
  return entry.material.name.toLowerCase().startsWith(words) ? score + 5 : score;
}

/**
 * Catalogue materials that answer to these words of the trade, best first: ids, names, groups, and what people call them
 * ("drywall", "polyiso", "2x6", "smart retarder"). American and British spelling. Every word must fit; an empty text gives all.
 */
export function findMaterials(words: string): readonly CatalogueMaterial[] {
  const asked = plain(words.slice(0, 200));
  if (asked === "") return catalogue;
  const ways = [asked, ...synonyms.filter(([said]) => said === asked).flatMap(([, meant]) => meant)];
  // A synonym inside a longer question: "2 in polyiso board" has the word polyiso.
  for (const [said, meant] of synonyms)
    if (said !== asked && ` ${asked} `.includes(` ${said} `))
      ways.push(...meant.map((other) => ` ${asked} `.replace(` ${said} `, ` ${other} `).trim()));
  return searchable
    .map((entry) => ({
      material: entry.material,
      score: Math.max(...ways.map((way, i) => worth(way, entry) - (i > 0 ? 1 : 0))),
    }))
    .filter(({ score }) => score > 0)
    .sort((a, b) => b.score - a.score)
    .map(({ material }) => material);
}
