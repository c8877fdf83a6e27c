import type { WholeWall } from "../../solver/index.ts";
import type { DrawnWall } from "../plots/section-strip.tsx";
import type { RunView } from "../state/index.ts";

/** One option as the sheet is handed it. */
export interface OptionInView {
  readonly id: string;
  readonly name: string;
  readonly run: RunView;
  readonly planned: DrawnWall;
  readonly wall: WholeWall | null;
  readonly price_perM2: number | null;
  readonly carbon_kgCO2ePerM2: number | null;
}
