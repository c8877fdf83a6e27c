import type { Checked } from "../issue.ts";
import type { WeatherYear } from "../weather-year.ts";
import { readEpw } from "./epw.ts";
import { readLoggedWeather } from "./logged-weather.ts";
import { plainText, readerError } from "./plain-text.ts";
import { isTimeHeading } from "./logger-columns.ts";
import { readTmy3 } from "./tmy3.ts";

export type WeatherFormat = "epw" | "tmy3" | "log";

/** What a text is, by its content; the name does not count. Null for none of the three. */
export function weatherFormatOf(text: string): WeatherFormat | null {
  const head = text.slice(0, 12_000).replace(/^\ufeff/, "");
  const lines = head.split(/\r\n|\n|\r/, 40);
  if (lines.some((line) => /^\s*"?LOCATION\s*,/i.test(line))) return "epw";
  if (/dry-bulb \(/i.test(lines[1] ?? "") || /^date \(mm\/dd\/yyyy\)/i.test(lines[1] ?? "")) return "tmy3";
  const heading = lines.find((line) => line.trim() !== "" && !line.trim().startsWith("#")) ?? "";
  if (heading.split(/[,;\t]/).some((cell) => isTimeHeading(cell.replaceAll('"', "")))) return "log";
  return null;
}

/**
 * Reads a weather file of any of three kinds: EPW, TMY3 CSV, or a plain logged table.
 * Never throws; errors carry the line and column, what is wrong, and what to do.
 */
export function readWeatherFile(name: string, text: string): Checked<WeatherYear> {
  const plain = plainText(name, text);
  if ("issue" in plain) return { ok: false, issues: [plain.issue] };
  switch (weatherFormatOf(plain.text)) {
    case "epw":
      return readEpw(name, text);
    case "tmy3":
      return readTmy3(name, text);
    case "log":
      return readLoggedWeather(name, text);
    case null:
      return {
        ok: false,
        issues: [
          readerError(
            name,
            "This is no weather file that is known here.",
            "Give an EPW file (starts with LOCATION), a TMY3 CSV (headings with Dry-bulb (C)), or a log with a heading row, a units row and stamps like 2024-01-31 13:00.",
          ),
        ],
      };
  }
}
