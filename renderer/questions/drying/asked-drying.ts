import {
  condensingPlane,
  wettings,
  whichWayItDries,
  type Case,
  type CaseLayer,
  type DryingAnswer,
  type Study,
} from "../../../solver/index.ts";

/** Months of the test's first day, in the order of a calendar: "10-01" is 1 October. */
export const testDates: readonly string[] = Array.from(
  { length: 12 },
  (_, month) => `${String(month + 1).padStart(2, "0")}-01`,
);

/** Layers that can be wetted: those with a thickness that hold water. */
export const wettableLayers = (aCase: Case): readonly CaseLayer[] =>
  aCase.layers.filter(
    ({ material, thickness_m }) => material.kind === "bulk" && thickness_m > 0 && material.density_kgm3 !== undefined,
  );

/** The layer that gets wet in a case: the one named if it is there, else the wood that pays for condensation, else the first that holds water. */
export function wettedLayerOf(aCase: Case, wanted: string | null): CaseLayer | null {
  const layers = wettableLayers(aCase);
  const { wood } = condensingPlane(aCase);
  return layers.find(({ id }) => id === wanted) ?? layers.find(({ id }) => id === wood) ?? layers[0] ?? null;
}

/** The wetting test of these cases; cases without a layer that holds water are left out. Null: none is left. */
export function dryingStudy(
  cases: readonly Case[],
  wantedLayer: string | null,
  wettingId: string,
  date: string,
): Study<DryingAnswer> | null {
  const wetting = (wettings.find(({ id }) => id === wettingId) ?? wettings[0]!).wetting;
  const able = cases.flatMap((aCase) => {
    const layer = wettedLayerOf(aCase, wantedLayer);
    return layer === null ? [] : [{ aCase, layer: layer.id }];
  });
  if (able.length === 0) return null;
  return whichWayItDries({
    cases: able.map(({ aCase }) => aCase),
    layer: able.map(({ layer }) => layer),
    wetting,
    date,
  });
}
