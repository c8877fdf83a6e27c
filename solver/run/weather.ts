import {
  findPlaces,
  placeById,
  placeName,
  readWeatherFile,
  syntheticYear,
  withMonthlyRain,
  type Checked,
  type Issue,
  type WeatherYear,
} from "../../climate/index.ts";
import type { Site } from "../model/index.ts";
import type { NamedTexts } from "./loads.ts";

/** Synthetic years are the same for everybody unless a project names another seed. */
const usualSeed = 1;

/** The weather year that a site names: an embedded place, or a file whose text the host has read. */
export function weatherOf(weather: Site["weather"], files: NamedTexts): Checked<WeatherYear> {
  if (isPlace(weather)) return placeYear(weather);
  const name = weather.file;
  const text = files[name];
  if (text === undefined) {
    return refuse(
      "site.weather.file",
      `The weather file "${name}" was not found.`,
      "Put it beside the project, name another file with --weather, or choose a place.",
    );
  }
  const read = readWeatherFile(name, text);
  const from = weather.monthlyRainFrom;
  if (!read.ok || typeof from !== "string") return read;
  const place = placeById(from);
  if (place === undefined) return unknownPlace("site.weather.monthlyRainFrom", from);
  const value = withMonthlyRain(read.value, place);
  return { ok: true, value, issues: value.issues };
}

type PlaceWeather = Extract<Site["weather"], { city: string }>;
type FileWeather = Exclude<Site["weather"], PlaceWeather>;
const isPlace = (weather: PlaceWeather | FileWeather): weather is PlaceWeather => typeof weather["city"] === "string";

function placeYear(weather: PlaceWeather): Checked<WeatherYear> {
  const place = placeById(weather.city);
  if (place === undefined) return unknownPlace("site.weather.city", weather.city);
  const value = syntheticYear(place, { kind: weather.year ?? "typical", seed: weather.seed ?? usualSeed });
  return { ok: true, value, issues: value.issues };
}

function unknownPlace(path: string, id: string): Checked<WeatherYear> {
  const near = findPlaces(id.replaceAll("-", " ")).slice(0, 3);
  const hint =
    near.length > 0 ? `Did you mean ${near.map((one) => `"${one.id}" (${placeName(one)})`).join(", ")}?` : "";
  return refuse(path, `There is no place "${id}" among the embedded ones.`, `${hint} Or name a weather file.`.trim());
}

function refuse(path: string, message: string, remedy: string): Checked<WeatherYear> {
  const issue: Issue = { path, message, remedy, severity: "error" };
  return { ok: false, issues: [issue] };
}
