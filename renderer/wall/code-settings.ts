import { placeById } from "../../climate/index.ts";
import type { CodeSettings, Edition, Project } from "../../solver/index.ts";

/** Mean of the coldest three months of an embedded place [degC]; undefined for a file, whose months are not read here. */
function coldestThreeMonths_C(project: Project): number | undefined {
  const city = project.site?.weather.city;
  const place = typeof city === "string" ? placeById(city) : undefined;
  if (!place) return undefined;
  const coldest = [...place.temperature_C].sort((one, other) => one - other).slice(0, 3);
  return coldest.reduce((sum, value) => sum + value, 0) / coldest.length;
}

/** The room in winter, where the project says it in two numbers. */
function winterRoom(project: Project): { indoor_C?: number; relativeHumidity?: number } {
  const { indoor } = project;
  if (indoor?.method === "seasonal") {
    return { indoor_C: indoor.winterTemperature_C, relativeHumidity: indoor.winterRelativeHumidity };
  }
  if (
    indoor?.method === "fixed" &&
    typeof indoor.temperature_C === "number" &&
    typeof indoor.relativeHumidity === "number"
  ) {
    return { indoor_C: indoor.temperature_C, relativeHumidity: indoor.relativeHumidity };
  }
  return {};
}

/** What the code tables and the ratio rule are told of a project. */
export function codeSettings(project: Project, edition: Edition): CodeSettings {
  const outdoorMean_C = coldestThreeMonths_C(project);
  return { edition, ...(outdoorMean_C === undefined ? {} : { winter: { outdoorMean_C, ...winterRoom(project) } }) };
}
