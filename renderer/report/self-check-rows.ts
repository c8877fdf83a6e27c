import type { ReportInput, SelfCheck, UnitSystem } from "../../solver/index.ts";

type Rows = NonNullable<ReportInput["selfCheck"]>;
type Probe = SelfCheck["probes"][number];
type Quantity = "T_K" | "RH" | "w_kgm3";

/** Places that decide: the face that is judged and the wood that pays. */
export interface Decisive {
  /** Probe of the face. */
  readonly face: string;
  /** Probe of the wooden layer's mean; null: no wood. */
  readonly wood: string | null;
}

/** What a rerun changes at the places that decide, and the largest change of any place with its root mean square: a rained-on face changes most. */
export function selfCheckRows(where: string, check: SelfCheck, decisive: Decisive, units: UnitSystem): Rows {
  const rows: Rows[number][] = [];
  const at = (id: string | null): Probe | undefined => check.probes.find((probe) => probe.id === id);
  const face = at(decisive.face);
  if (face)
    rows.push({
      what: `${where}: ${lowered(face.label)}`,
      difference: `${said("T_K", face.T_K.largest, units)}, ${said("RH", face.RH.largest, units)}`,
    });
  const wood = at(decisive.wood);
  if (wood)
    rows.push({
      what: `${where}: mean water of ${lowered(wood.label)}`,
      difference: said("w_kgm3", wood.w_kgm3.largest, units),
    });
  for (const [quantity, name] of [
    ["T_K", "temperature"],
    ["RH", "relative humidity"],
    ["w_kgm3", "water content"],
  ] as const) {
    const most = check.probes.reduce<Probe | null>(
      (worst, probe) => (worst === null || probe[quantity].largest > worst[quantity].largest ? probe : worst),
      null,
    );
    if (most === null) continue;
    const { largest, rootMeanSquare } = most[quantity];
    rows.push({
      what: `${where}: ${name} anywhere, at ${lowered(most.label)}`,
      difference: `${said(quantity, largest, units)}; root mean square ${said(quantity, rootMeanSquare, units)}`,
    });
  }
  rows.push({ what: `${where}: slices, run and rerun`, difference: `${check.cells} and ${check.refinedCells}` });
  return rows;
}

function said(quantity: Quantity, value: number, units: UnitSystem): string {
  switch (quantity) {
    case "T_K":
      return units === "ip" ? `${(value * 1.8).toFixed(2)} °F` : `${value.toFixed(2)} K`;
    case "RH":
      return `${(value * 100).toFixed(1)} points`;
    case "w_kgm3":
      return `${value.toFixed(2)} kg/m³`;
  }
}

/** Inside a sentence; an abbreviation keeps its capitals. */
const lowered = (label: string): string =>
  /^[A-Z][a-z]/.test(label) ? label.charAt(0).toLowerCase() + label.slice(1) : label;
