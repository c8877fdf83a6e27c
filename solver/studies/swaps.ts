import { materialAtThickness, ratedResistance_m2KW, type Case, type CaseLayer } from "../model/index.ts";
import { materialById } from "../materials/index.ts";
import { withLayer } from "./change-case.ts";
import { ratedConductivity_WmK } from "./material-figures.ts";
import { condensingPlane, exteriorInsulation } from "./plane.ts";
import { amount, phrase, type Phrase } from "./phrase.ts";
import type { Study } from "./study.ts";
import { broken, holdsAll, type MemberSummary } from "./summary.ts";

/** One thing a builder may ask to put in place of another. */
export interface Swap {
  readonly id: string;
  readonly layer: string;
  readonly from: string;
  readonly to: string;
  readonly thickness_m: number;
  readonly case: Case;
}

export interface SwapRow {
  readonly swap: Omit<Swap, "case">;
  readonly summary: MemberSummary | null;
  /** True: every finding that holds as drawn still holds. Null: not run. */
  readonly keeps: boolean | null;
  readonly sentence: Phrase;
}

export interface SwapsAnswer {
  readonly option: string;
  readonly path: string;
  readonly rows: readonly SwapRow[];
}

/** What is offered in place of what, by catalogue id. Boards change at equal resistance, panels at equal thickness. Common practice, no source. */
const boards = ["xps", "eps_ii", "pir_foil", "pir_glass", "stone_wool_board"] as const;
const panels = ["osb_111", "plywood_softwood_127", "fibreboard_sheathing", "gypsum_glassmat"] as const;
const fills = ["glass_fibre_batt", "stone_wool_batt", "cellulose_dense"] as const;
const retarders = ["paint_latex", "paint_vr_primer", "kraft_facing", "smart_pa", "poly_6mil"] as const;

/** The swaps that mean something in a case. */
export function swapsOf(aCase: Case): readonly Swap[] {
  const plane = condensingPlane(aCase);
  const offers: { layer: CaseLayer; ids: readonly string[]; equalResistance: boolean }[] = [
    ...exteriorInsulation(aCase).map((layer) => ({ layer, ids: boards, equalResistance: true })),
    ...aCase.layers
      .slice(0, plane.frame)
      .filter((layer) => (panels as readonly string[]).includes(layer.material.id))
      .map((layer) => ({ layer, ids: panels, equalResistance: false })),
    ...[aCase.layers[plane.frame]!]
      .filter((layer) => (fills as readonly string[]).includes(layer.material.id))
      .map((layer) => ({ layer, ids: fills, equalResistance: false })),
    ...aCase.layers
      .slice(plane.frame + 1)
      .filter((layer) => (retarders as readonly string[]).includes(layer.material.id))
      .map((layer) => ({ layer, ids: retarders, equalResistance: false })),
  ];
  return offers.flatMap(({ layer, ids, equalResistance }) =>
    ids.filter((id) => id !== layer.material.id).flatMap((id) => swapOf(aCase, layer, id, equalResistance) ?? []),
  );
}

function swapOf(aCase: Case, layer: CaseLayer, id: string, equalResistance: boolean): Swap | null {
  const found = materialById(id);
  if (found === undefined) return null;
  const conductivity = ratedConductivity_WmK(found);
  const thickness_m =
    found.kind === "membrane"
      ? 0
      : equalResistance && conductivity !== null
        ? ratedResistance_m2KW(layer.material, layer.thickness_m) * conductivity
        : layer.thickness_m;
  const changed = withLayer(aCase, layer.id, (each) => ({
    ...each,
    name: found.name,
    material: materialAtThickness(found, thickness_m),
    thickness_m,
    initial: "relativeHumidity" in each.initial ? each.initial : { relativeHumidity: 0.8 },
  }));
  return { id: `${layer.id}>${id}`, layer: layer.id, from: layer.name, to: found.name, thickness_m, case: changed };
}

/** Which swaps keep what the drawing promises? Runs each swap beside the wall as drawn. */
export function whichSwaps(aCase: Case): Study<SwapsAnswer> {
  const swaps = swapsOf(aCase);
  return {
    id: `swaps:${aCase.option}/${aCase.path}`,
    members: [
      { key: "drawn", label: "as drawn", case: aCase },
      ...swaps.map((swap) => ({ key: swap.id, label: `${swap.to} for ${swap.from}`, case: swap.case })),
    ],
    reduce: (done) => {
      const drawn = done.get("drawn");
      return {
        option: aCase.option,
        path: aCase.path,
        rows: swaps.map(({ case: changed, ...swap }) => {
          void changed;
          const summary = done.get(swap.id);
          const ran = summary?.status === "finished" ? summary : null;
          const keeps = ran === null || drawn?.status !== "finished" ? null : keepsFindings(drawn, ran);
          return { swap, summary: ran, keeps, sentence: sentence(swap, ran, keeps) };
        }),
      };
    },
  };
}

/** True when no kind of finding that holds as drawn is broken after the swap. */
function keepsFindings(drawn: MemberSummary, swapped: MemberSummary): boolean {
  if (holdsAll(swapped) === true) return true;
  const brokenBefore = new Set(broken(drawn).map((finding) => finding.id));
  return broken(swapped).every((finding) => brokenBefore.has(finding.id));
}

function sentence(swap: Omit<Swap, "case">, summary: MemberSummary | null, keeps: boolean | null): Phrase {
  const what =
    swap.thickness_m > 0
      ? phrase`${swap.to}, ${amount("board", swap.thickness_m)}, for ${swap.from}`
      : phrase`${swap.to} for ${swap.from}`;
  if (keeps === null || summary === null) return [...what, ": not run."];
  const peak =
    summary.peakMoisture_percent === null
      ? []
      : phrase` The sheathing peaks at ${amount("moisture", summary.peakMoisture_percent)}.`;
  if (keeps) return [...what, ": the findings hold.", ...peak];
  const count = broken(summary).length;
  return [...what, `: no. ${count === 1 ? "One finding is" : `${count} findings are`} broken.`, ...peak];
}
