import { lazy, type ComponentType, type LazyExoticComponent } from "react";
import type { SheetId } from "../state/index.ts";

/** A sheet is a folder with a `sheet.tsx` whose default export draws it; a sheet that is not there has no tab. */
const found = import.meta.glob<{ default: ComponentType }>("../*/sheet.tsx");

export interface Sheet {
  readonly id: SheetId;
  readonly number: number;
  readonly title: string;
  readonly Component: LazyExoticComponent<ComponentType>;
}

const set: readonly (readonly [SheetId, string, string])[] = [
  ["wall", "Wall", "wall"],
  ["exposure", "Exposure", "exposure"],
  ["year", "Year", "year"],
  ["sideBySide", "Side by Side", "side-by-side"],
  ["questions", "Questions", "questions"],
  ["report", "Report", "report"],
];

/** The drawing set, in order. */
export const sheets: readonly Sheet[] = set.flatMap(([id, title, folder], index) => {
  const load = found[`../${folder}/sheet.tsx`];
  return load ? [{ id, title, number: index + 1, Component: lazy(load) }] : [];
});

/** Fetches the sheets that no one has turned to yet, when the window is idle: turning to one needs no server later. */
export function fetchSheets(): void {
  requestIdleCallback(
    () => {
      for (const [, , folder] of set) void found[`../${folder}/sheet.tsx`]?.().catch(() => undefined);
    },
    { timeout: 5000 },
  );
}

export const sheetCount = set.length;
