import { useMemo } from "react";
import { placeName, places } from "../../../climate/index.ts";
import type { Project } from "../../../solver/index.ts";
import { askWith } from "../asking/question-inputs.ts";
import { AskedChoice } from "./asked-choice.tsx";

const drawn = "as drawn";

/** Where the question stands: where the wall is, or any embedded place. */
export function PlaceChoice({ project, place }: { readonly project: Project; readonly place: string | null }) {
  const weather = project.site?.weather;
  const own = typeof weather?.city === "string" ? weather.city : null;
  const choices = useMemo(() => {
    const listed = [...places].sort((one, other) => placeName(one).localeCompare(placeName(other)));
    const file = typeof weather?.file === "string" ? [{ value: drawn, words: weather.file }] : [];
    return [...file, ...listed.map((each) => ({ value: each.id, words: placeName(each) }))];
  }, [weather]);
  const value = place ?? own ?? drawn;
  return (
    <AskedChoice
      label="Place"
      value={value}
      choices={choices}
      changed={place !== null && place !== own}
      onChange={(chosen) => askWith({ place: chosen === own || chosen === drawn ? null : chosen })}
    />
  );
}
