import type { Checked, WeatherYear } from "../../climate/index.ts";
import type { Site } from "../model/index.ts";
import type { NamedTexts } from "./loads.ts";

/** The weather year that a site names: an embedded place, or a file whose text the host has read. */
export function weatherOf(weather: Site["weather"], files: NamedTexts): Checked<WeatherYear> {
  void files;
  throw new Error(`weatherOf: not built yet (${JSON.stringify(weather)})`);
}
