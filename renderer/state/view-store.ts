import { create } from "zustand";
import { editions, usualSettings, type Edition } from "../../solver/index.ts";

export type SheetId = "wall" | "exposure" | "year" | "sideBySide" | "questions" | "report";
export type QuestionId = "howThick" | "drying" | "whatIf" | "humidity";
/** Inch-pound, metric, or inch-pound with metric behind it. */
export type Units = "ip" | "si" | "both";
export type ThemeChoice = "system" | "light" | "dark";

export interface ViewState {
  readonly sheet: SheetId;
  readonly option: string;
  readonly path: string;
  /** The layer that the Wall sheet's schedule stands on. */
  readonly layer: string | null;
  /** The question in view on the Questions sheet. */
  readonly question: QuestionId;
  /** Edits of a layer are made in every path through which it runs. */
  readonly throughAll: boolean;
  /** Book and edition whose tables are read on the Wall sheet. */
  readonly edition: Edition;
  /** The schedule asks for a material: for a new layer inward of `layer`, or in the place of that layer's. */
  readonly askingMaterial: "add" | "replace" | null;
  readonly units: Units;
  readonly themeChoice: ThemeChoice;
  /** Date cursor shared by all sheets: day of the judged year, 0 is its first day. */
  readonly selectedDay: number;
  /** What the title block says of the scale of the sheet in view: "1:2, drawn in plan". */
  readonly scale: string;
  readonly openDialog: "keys" | "words" | "about" | "newWall" | "material" | null;
  /** One sentence about what just happened or could not be done; null: nothing to say. */
  readonly notice: string | null;
}

const kept = "wallyear.view";

function remembered(): Partial<Pick<ViewState, "units" | "themeChoice" | "edition">> {
  try {
    const read: unknown = JSON.parse(localStorage.getItem(kept) ?? "{}");
    if (typeof read !== "object" || read === null) return {};
    const { units, themeChoice, edition } = read as Record<string, unknown>;
    const book = editions.find((candidate) => candidate === edition);
    return {
      ...(units === "ip" || units === "si" || units === "both" ? { units } : {}),
      ...(themeChoice === "system" || themeChoice === "light" || themeChoice === "dark" ? { themeChoice } : {}),
      ...(book ? { edition: book } : {}),
    };
  } catch {
    // Storage may be full, switched off or hold something else; the defaults do.
    return {};
  }
}

export const useViewStore = create<ViewState>()(() => ({
  sheet: "wall",
  option: "A",
  path: "",
  layer: null,
  throughAll: true,
  edition: usualSettings.edition,
  question: "howThick",
  askingMaterial: null,
  units: "ip",
  themeChoice: "system",
  selectedDay: 136,
  scale: "",
  openDialog: null,
  notice: null,
  ...remembered(),
}));

export const view = (change: Partial<ViewState>): void => {
  useViewStore.setState(change);
  if ("units" in change || "themeChoice" in change || "edition" in change) {
    const { units, themeChoice, edition } = useViewStore.getState();
    try {
      localStorage.setItem(kept, JSON.stringify({ units, themeChoice, edition }));
    } catch {
      // Only a preference is lost.
    }
  }
};

export const setSelectedDay = (day: number): void => view({ selectedDay: Math.max(0, Math.min(364, Math.round(day))) });
