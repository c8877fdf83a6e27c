import type { Path } from "../../solver/index.ts";

const kinds: Record<Path["kind"], string> = {
  studBay: "Stud bay",
  stud: "Stud",
  plate: "Plate",
  header: "Header",
  rimJoist: "Rim joist",
  ledger: "Ledger",
  balcony: "Balcony",
  windowBuck: "Window buck",
  solid: "Solid wall",
  other: "Path",
};

/** What a path is called: its own name, else the trade's word for its kind. */
export const pathTitle = (path: Pick<Path, "kind" | "name">): string => path.name || kinds[path.kind];
