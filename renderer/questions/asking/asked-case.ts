import { placeById, type Issue } from "../../../climate/index.ts";
import {
  casesOf,
  exteriorInsulation,
  lookupFor,
  ratedConductivity_WmK,
  unknownsOf,
  withContinuousInsulation,
  type Case,
  type CaseLayer,
  type Project,
} from "../../../solver/index.ts";
import type { QuestionInputs } from "./question-inputs.ts";

export type AskedCase =
  | { readonly ok: true; readonly case: Case; readonly issues: readonly Issue[] }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/** First thickness of a board that the question itself lays outside; the study tries all others [m]. */
const firstBoard_m = 0.0508;

export const boardOf = (insulation: string | null): string | null =>
  insulation?.startsWith("board:") === true ? insulation.slice("board:".length) : null;

/** The project moved to another embedded place, its climate zone with it. */
export function atPlace(project: Project, placeId: string | null): Project {
  const place = placeId === null ? undefined : placeById(placeId);
  if (!place || !project.site) return project;
  const zone = /^[0-8][ABC]?/.exec(place.climateZone)?.[0];
  return {
    ...project,
    site: { ...project.site, weather: { city: place.id }, ...(zone === undefined ? {} : { climateZone: zone }) },
  };
}

/** The project with a board of a material laid outside of one option, in place of what lies there. */
export function withBoard(
  project: Project,
  optionId: string,
  material: string | null,
  thickness_m = firstBoard_m,
): Project {
  if (material === null) return project;
  const lookup = lookupFor(project);
  return {
    ...project,
    options: project.options.map((option) =>
      option.id === optionId
        ? withContinuousInsulation(option, { material, thickness_m, name: option.name, lookup })
        : option,
    ),
  };
}

/** The case of an option and path as the question asks it, or what keeps it from being asked. */
export function askedCase(
  project: Project,
  optionId: string,
  pathId: string,
  inputs: Pick<QuestionInputs, "insulation" | "place" | "humidity" | "paint_perm">,
): AskedCase {
  const made = casesOf(withBoard(atPlace(project, inputs.place), optionId, boardOf(inputs.insulation)));
  if (!made.ok) return { ok: false, issues: made.issues };
  const found = made.value.find((each) => each.option === optionId && each.path === pathId);
  if (!found) return { ok: false, issues: made.issues };
  const values: readonly (readonly [string, number | null])[] = [
    ["winterHumidity", inputs.humidity],
    ["finishPermeance", inputs.paint_perm],
  ];
  const changed = values.reduce((aCase, [id, value]) => {
    const unknown = value === null ? undefined : unknownsOf(aCase).find((each) => each.id === id);
    return unknown === undefined || value === null ? aCase : unknown.apply(aCase, value);
  }, found);
  return { ok: true, case: changed, issues: made.issues };
}

/** What an input is in a case as drawn: winter humidity (0..1), permeance of the finish [US perm]; null where it has none. */
export const drawnValue = (aCase: Case, id: "winterHumidity" | "finishPermeance"): number | null =>
  unknownsOf(aCase).find((unknown) => unknown.id === id)?.now ?? null;

/** Above this a layer is structure, cladding or lining [W/(m K)], below this depth it is no board [m]. Common practice, no source. */
const insulationLimit_WmK = 0.06;
const leastDepth_m = 0.005;

const isInsulation = ({ material, thickness_m }: CaseLayer): boolean =>
  material.kind === "bulk" &&
  thickness_m > leastDepth_m &&
  (ratedConductivity_WmK(material) ?? Infinity) < insulationLimit_WmK;

/** The insulation layers of a case, those outside of the frame first. */
export function insulationLayers(aCase: Case): readonly CaseLayer[] {
  const outside = exteriorInsulation(aCase);
  return [...outside, ...aCase.layers.filter((layer) => isInsulation(layer) && !outside.includes(layer))];
}

/** What is laid outside when nobody has said what. */
const usualBoard = "board:xps";

/** What the question asks of: what was chosen if the wall has it, else what lies outside, else the usual board laid there. */
export function insulationAsked(drawn: Case, chosen: string | null): string | null {
  if (boardOf(chosen) !== null) return chosen;
  if (chosen !== null && insulationLayers(drawn).some(({ id }) => chosen === `layer:${id}`)) return chosen;
  return exteriorInsulation(drawn).length > 0 ? null : usualBoard;
}

/** The layer whose thickness is asked for: the one named, else what lies outside, else the first insulation; null without any. */
export function askedLayer(aCase: Case, insulation: string | null): CaseLayer | null {
  const layers = insulationLayers(aCase);
  const named = insulation?.startsWith("layer:") === true ? insulation.slice("layer:".length) : null;
  return layers.find(({ id }) => id === named) ?? layers[0] ?? null;
}
