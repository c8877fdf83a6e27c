import { hourlyLoads, readLoggerCsv, type Checked, type HourlyLoads, type WeatherYear } from "../../climate/index.ts";
import type { Case } from "../model/index.ts";
import { labLoads } from "../physics/index.ts";
import { dayOfYear } from "./calendar.ts";

/** Texts of the files a project names (weather, logged rooms), by the name the project uses. */
export type NamedTexts = Readonly<Record<string, string>>;

/** Loads on both faces for a case: from the weather year for a site, from its own tables for a laboratory case (weather null). */
export function loadsOf(aCase: Case, weather: WeatherYear | null, files: NamedTexts): Checked<HourlyLoads> {
  const { exposure } = aCase;
  if (exposure.kind === "lab") return { ok: true, value: labLoads(exposure.lab), issues: [] };
  if (weather === null)
    throw new RangeError(`a case on a site needs a weather year, got none for path "${aCase.path}"`);
  const { indoor } = exposure;
  const input = {
    weather,
    face: exposure.face,
    rain: exposure.site.rain,
    room: indoor,
    air: exposure.air ?? undefined,
    startDay: dayOfYear(aCase.run.start),
  };
  if (indoor.method !== "logger") return hourlyLoads(input);
  const text = files[indoor.file];
  if (text === undefined) {
    return {
      ok: false,
      issues: [
        {
          path: "indoor.file",
          message: `The logged room air "${indoor.file}" was not found beside the project.`,
          remedy: "Put the file next to the project, or choose another indoor method.",
          severity: "error",
        },
      ],
    };
  }
  const logged = readLoggerCsv(indoor.file, text);
  return logged.ok ? hourlyLoads({ ...input, loggedRoom: logged.value }) : logged;
}
