import type { Issue } from "../issue.ts";
import type { Place } from "../weather-year.ts";
import { readerError } from "./plain-text.ts";
import { numberOf } from "./scan-row.ts";

/** The place of a LOCATION line: name, state, country, source, station, latitude, longitude, time zone, elevation. */
export function readLocation(
  lineText: string,
  line: number,
): { readonly place: Place | null; readonly issues: readonly Issue[] } {
  const parts = lineText.split(",").map((part) => part.trim());
  return placeOf(
    parts[1] ?? "",
    [parts[6], parts[7], parts[8], parts[9]].map((part) => part ?? ""),
    `line ${line}`,
    [7, 8, 9, 10],
  );
}

/** Checks the four numbers of a place. `columns` are their positions for messages, counted from 1. */
export function placeOf(
  name: string,
  texts: readonly string[],
  path: string,
  columns: readonly number[],
): { readonly place: Place | null; readonly issues: readonly Issue[] } {
  const wanted = [
    { title: "latitude", low: -90, high: 90 },
    { title: "longitude", low: -180, high: 180 },
    { title: "time zone", low: -12, high: 14 },
    { title: "elevation", low: -500, high: 9000 },
  ];
  const issues: Issue[] = [];
  const numbers = wanted.map(({ title, low, high }, k) => {
    const value = numberOf(texts[k] ?? "");
    if (!(value >= low && value <= high))
      issues.push(
        readerError(
          `${path}, column ${columns[k]} (${title})`,
          `"${(texts[k] ?? "").slice(0, 40)}" is no ${title}.`,
          `Enter ${low} to ${high}${title === "longitude" ? ", west negative" : ""}.`,
        ),
      );
    return value;
  });
  if (issues.length > 0) return { place: null, issues };
  return {
    issues,
    place: {
      name: name === "" ? "unnamed place" : name,
      latitude_deg: numbers[0]!,
      longitude_deg: numbers[1]!,
      utcOffset_h: numbers[2]!,
      elevation_m: numbers[3]!,
    },
  };
}
