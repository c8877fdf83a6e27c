import { expect, test } from "vitest";
import { placeById, readLoggedRoom, readWeatherFile, syntheticYear, type Checked } from "../../climate/index.ts";
import { columnRules, weatherColumns } from "../../climate/readers/columns.ts";
import { randomOf, type Random } from "../../climate/synthesis/random.ts";
import { epwHead, epwRows, joinEpw, tmy3Text } from "./support/made-files.ts";

const made = syntheticYear(placeById("burlington-vt")!, { kind: "typical", seed: 5 });
const rows = epwRows(made);
const few = rows.slice(0, 60);
const log = [
  "# place: a garden",
  "# latitude: 44.5",
  "# longitude: -73.1",
  "# utc: -5",
  "# elevation: 100",
  "time,temperature,relative humidity,wind speed,wind direction,global sun,rain",
  ",degF,%,mph,deg,W/m2,in",
  ...few.map(
    (row) =>
      `2023-01-0${row[2]} ${String(Number(row[3]) - 1).padStart(2, "0")}:30,${Number(row[6]) * 1.8 + 32},${row[8]},${row[21]},${row[20]},${row[13]},0`,
  ),
].join("\n");

const bits = [
  "",
  ",",
  "\n",
  "\r\n",
  ";",
  '"',
  "\u0000",
  "\ufeff",
  "NaN",
  "-9900",
  "9999",
  "1e308",
  "-",
  "99999999999999999999",
  "é",
  "\ud800",
  "24:00",
  "LOCATION,",
  "0x1F",
  "#",
  "\t",
  "02/29/2000",
  "2024-02-30",
];

/** One to five cuts, copies, swaps and inserts at random places. */
function damaged(text: string, random: Random): string {
  let out = text;
  const whole = (n: number): number => Math.floor(random.uniform() * n);
  for (let round = 1 + whole(5); round > 0; round--) {
    const at = whole(out.length + 1);
    const length = whole(random.uniform() < 0.2 ? out.length : 12);
    switch (whole(6)) {
      case 0:
        out = out.slice(0, at) + out.slice(at + length);
        break;
      case 1:
        out = out.slice(0, at) + bits[whole(bits.length)]! + out.slice(at);
        break;
      case 2:
        out = out.slice(0, at) + out.slice(at, at + length) + out.slice(at);
        break;
      case 3:
        out = out.slice(0, at) + String.fromCharCode(whole(300)) + out.slice(at + 1);
        break;
      case 4:
        out = out.slice(0, at);
        break;
      default:
        out = out.slice(0, at) + bits[whole(bits.length)]! + out.slice(at + length);
    }
  }
  return out;
}

function holds<T>(result: Checked<T>, seed: number): void {
  const errors = result.issues.filter((issue) => issue.severity === "error");
  if (result.ok) expect(errors, `seed ${seed}`).toEqual([]);
  else expect(errors.length, `seed ${seed}`).toBeGreaterThan(0);
  for (const { path, message, remedy } of result.issues)
    if (!(path.length > 0 && message.length > 5 && remedy.length > 5))
      throw new Error(`seed ${seed}: an issue says nothing: ${path}, ${message}, ${remedy}`);
}

const shortTexts = [joinEpw(epwHead(made), few), tmy3Text(made, few, (row) => row[33]!), log];

test("1,900 short files damaged at random are answered with a year or with errors, never with an exception", () => {
  for (let seed = 0; seed < 1900; seed++) {
    const text = damaged(shortTexts[seed % 3]!, randomOf(seed));
    holds(readWeatherFile(`file ${seed}`, text), seed);
    if (seed % 3 === 2) holds(readLoggedRoom(`file ${seed}`, text), seed);
  }
});

test("100 whole years damaged at random give finite numbers within their limits, or errors", () => {
  const texts = [joinEpw(epwHead(made), rows), tmy3Text(made, rows, (row) => row[33]!)];
  let read = 0;
  for (let seed = 0; seed < 100; seed++) {
    const result = readWeatherFile(`year ${seed}`, damaged(texts[seed % 2]!, randomOf(10_000 + seed)));
    holds(result, seed);
    if (!result.ok) continue;
    read++;
    for (const column of weatherColumns) {
      const { low, high } = columnRules[column];
      const wrong = result.value[column].findIndex((value) => !(value >= low && value <= high));
      expect(wrong, `seed ${seed}, ${column}, hour ${wrong}: ${result.value[column][wrong]}`).toBe(-1);
    }
  }
  // Enough damaged years must survive for the check to mean something.
  expect(read).toBeGreaterThan(20);
});
