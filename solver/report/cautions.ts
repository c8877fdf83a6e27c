import type { ReportInput } from "./report.ts";
import { exteriorInsulation } from "../studies/index.ts";

const always: readonly string[] = [
  "An estimate: one line through the wall, one year of weather at a time. Local codes and a licensed designer decide.",
  "Mould, rot, corrosion and frost hurt people and buildings: where people are ill or wood is soft, have the wall opened.",
  "Not modelled: corners, stud edges, bolts, air loops, water that runs down or sideways.",
];

/** What stands on every sheet. */
export function standingCautions(input: ReportInput): readonly string[] {
  return input.weather.kind === "synthetic"
    ? [...always, "The weather is synthetic, made from monthly figures; no storm or cold spell in it happened."]
    : always;
}

/** Cautions of this wall: what its paths, weather and inputs cannot say. */
export function cautionsOf(input: ReportInput): readonly string[] {
  return [...standingCautions(input), ...ownCautions(input)];
}

/** Those of this wall alone. */
export function ownCautions(input: ReportInput): readonly string[] {
  const cautions = ["1 kg of water at one spot is not 1 kg on every square metre."];
  const kinds = new Set(input.options.flatMap((option) => option.paths.map((path) => path.case.pathKind)));
  if (kinds.has("ledger") || kinds.has("balcony"))
    cautions.push(
      "Ledgers and balconies: heat also flows sideways to the bearing; the line through it shows the face colder or warmer than a corner of it is. Their fastening is an engineer's matter.",
    );
  if (kinds.has("rimJoist"))
    cautions.push("Rim joists leak more air than the wall beside them; test them with smoke before they are closed.");
  const layers = input.options.flatMap((option) => option.shown.layers);
  if (layers.some((layer) => layer.material.group === "Masonry" && layer.thickness_m > 0.15))
    cautions.push("Joist ends in masonry are colder and wetter than the line that was run; look at each.");
  if (input.options.some((option) => exteriorInsulation(option.shown).some((layer) => layer.thickness_m > 0.05)))
    cautions.push("Thick boards carry the cladding on long fasteners: spacing and length come from the engineer.");
  const ranged = input.answers.whatIf?.bars.length ?? 0;
  cautions.push(
    ranged > 0
      ? `${ranged} inputs were ranged because they are not known well; the appendix says which and how much they move the answer.`
      : "Inputs were taken as given; no range was run, so how much the answer moves when they are wrong is not known.",
  );
  return cautions;
}
