import { materialAtThickness, ratedResistance_m2KW, type Case, type CaseLayer } from "../model/index.ts";
import { materialById, type Material } from "../materials/index.ts";
import { withLayer } from "./change-case.ts";
import { ratedConductivity_WmK } from "./material-figures.ts";
import { condensingPlane, exteriorInsulation } from "./plane.ts";
import { amount, phrase, type Phrase } from "./phrase.ts";
import { stockThicknesses_m } from "./stock.ts";
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

/** What is offered in place of what, by catalogue id. Boards change at no less resistance, panels at equal thickness. Common practice, no source. */
const boards = ["xps", "eps_ii", "pir_foil", "pir_glass", "stone_wool_board"] as const;
const panels = ["osb_111", "plywood_softwood_127", "fibreboard_sheathing", "gypsum_glassmat"] as const;
const fills = ["glass_fibre_batt", "stone_wool_batt", "cellulose_dense"] as const;
const sheets = ["kraft_facing", "smart_pa", "poly_6mil"] as const;
const finishes = ["paint_latex", "paint_vr_primer", "vinyl_wallpaper"] as const;

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
    ...[sheets, finishes].flatMap((ids) =>
      aCase.layers
        .slice(plane.frame + 1)
        .filter((layer) => (ids as readonly string[]).includes(layer.material.id))
        .map((layer) => ({ layer, ids, equalResistance: false })),
    ),
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
        ? nextStock_m(found, ratedResistance_m2KW(layer.material, layer.thickness_m) * conductivity)
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

/** The thinnest stock board of at least this thickness, a millimetre's grace given; thicker than all: what is asked. */
const nextStock_m = (material: Material, least_m: number): number =>
  stockThicknesses_m(material).find((stock) => stock >= least_m - 0.001) ?? least_m;

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
      ? phrase`${short(swap.to)}, ${amount("board", swap.thickness_m)}, for ${inner(swap.from)}`
      : phrase`${short(swap.to)} for ${inner(swap.from)}`;
  if (keeps === null || summary === null) return [...what, ": not run."];
  const peak =
    summary.peakMoisture_percent === null
      ? []
      : phrase` The sheathing peaks at ${amount("moisture", summary.peakMoisture_percent)}.`;
  if (keeps) return [...what, ": what holds as drawn still holds.", ...peak];
  const count = broken(summary).length;
  return [...what, `: no. ${count === 1 ? "One finding is" : `${count} findings are`} broken.`, ...peak];
}

/** Names without brackets and grades; inside a sentence without the capital of a plain word. */
const short = (name: string): string =>
  name
    .replace(/\([^)]*\)/g, "")
    .split(",")
    .slice(0, 2)
    .join(",")
    .trim();
const inner = (name: string): string => {
  const first = short(name).split(",")[0]!;
  return /^[A-Z][a-z]/.test(first) ? first.charAt(0).toLowerCase() + first.slice(1) : first;
};
