import type { Checked, HourlyLoads, WeatherYear } from "../../climate/index.ts";
import type { Case } from "../model/index.ts";

/** Texts of the files a project names (weather, logged rooms), by the name the project uses. */
export type NamedTexts = Readonly<Record<string, string>>;

/** Loads on both faces for a case: from the weather year for a site, from its own tables for a laboratory case (weather null). */
export function loadsOf(aCase: Case, weather: WeatherYear | null, files: NamedTexts): Checked<HourlyLoads> {
  void weather;
  void files;
  throw new Error(`loadsOf: not built yet (${aCase.path})`);
}
