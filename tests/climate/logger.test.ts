import { describe, expect, test } from "vitest";
import { placeById, readLoggedRoom, readLoggerTable, readWeatherFile, syntheticYear } from "../../climate/index.ts";
import { dateOfDays, minutesOfDate, readStamp } from "../../climate/readers/logger-time.ts";

/** Stamps every `step` minutes on a clock; `zone` shifts the clock from standard time. */
function stamps(
  from: number,
  count: number,
  step: number,
  shift: (standard: number) => number = () => 0,
): { standard: number; text: string }[] {
  return Array.from({ length: count }, (_, k) => {
    const standard = from + k * step;
    return { standard, text: stampText(standard + shift(standard)) };
  });
}
const two = (n: number): string => String(n).padStart(2, "0");
function stampText(minutes: number): string {
  const days = Math.floor(minutes / 1440);
  const { year, month, day } = dateOfDays(days);
  const rest = minutes - days * 1440;
  return `${year}-${two(month)}-${two(day)} ${two(Math.floor(rest / 60))}:${two(rest % 60)}`;
}
/** A temperature that tells its hour of standard time. */
const mark = (standard: number): number => 20 + 5 * Math.sin((2 * Math.PI * standard) / 1440);

const room = (rows: { standard: number; text: string }[], units = "degC,%"): string =>
  [
    "time,temperature,relative humidity",
    `-,${units}`,
    ...rows.map(({ standard, text }) => `${text},${mark(standard).toFixed(4)},45`),
  ].join("\n");
const goodRoom = (text: string) => {
  const read = readLoggedRoom("room.csv", text);
  if (!read.ok) throw new Error(read.issues.map((issue) => `${issue.path}: ${issue.message}`).join("\n"));
  return { ...read.value, issues: read.issues };
};
const start = minutesOfDate(2023, 1, 1, 60);

describe("stamps", () => {
  test("calendar and day count agree over a leap year and back", () => {
    // Gregorian calendar: 2000-03-01 is day 11017 since 1970-01-01.
    expect(minutesOfDate(2000, 3, 1, 0) / 1440).toBe(11_017);
    for (let day = -1000; day < 40_000; day += 13) {
      const { year, month, day: d } = dateOfDays(day);
      expect(minutesOfDate(year, month, d, 0)).toBe(day * 1440);
    }
  });

  test("are read in the forms that loggers write", () => {
    const expected = minutesOfDate(2024, 1, 31, 13 * 60);
    for (const text of [
      "2024-01-31 13:00",
      "2024-01-31T13:00:00",
      "2024/01/31 13:00",
      "1/31/2024 1:00 PM",
      "01/31/24 13:00",
      "31.01.2024 13:00",
      "2024-01-31T13:00:00.000",
    ])
      expect(readStamp(text, false)?.minutes, text).toBe(expected);
    expect(readStamp("31/1/2024 13:00", true)?.minutes).toBe(expected);
    expect(readStamp("2024-01-31T18:00:00Z", false)?.utcOffset).toBe(0);
    expect(readStamp("2024-01-31T13:00:00-05:00", false)?.utcOffset).toBe(-300);
    for (const text of [
      "",
      "noon",
      "2024-02-30 12:00",
      "2023-02-29",
      "2024-01-31 25:00",
      "13:00",
      "1/31/2024 13:00 PM",
    ])
      expect(readStamp(text, false), text).toBeNull();
  });
});

describe("a room log", () => {
  test("of every step from a minute to a day comes out in hours", () => {
    for (const [step, count] of [
      [1, 3000],
      [10, 600],
      [15, 400],
      [60, 200],
      [180, 60],
      [1440, 20],
    ] as const) {
      const log = goodRoom(room(stamps(start, count, step)));
      expect(log.hours, `step ${step}`).toBe(Math.ceil(((count - 1) * step) / 60) + 1);
      expect(log.firstHour).toBe(0);
      expect(log.relativeHumidity.every((value) => Math.abs(value - 0.45) < 1e-12)).toBe(true);
      // A straight line through a sine sampled three-hourly is off by up to 0.4 K; a daily sample sees one phase only.
      if (step <= 180)
        for (let k = 0; k < log.hours; k++)
          expect(Math.abs(log.temperature_C[k]! - mark(start + 60 * k))).toBeLessThan(0.7);
    }
  });

  test("in degF and fractions, with units in the headings, semicolons and decimal commas, is the same", () => {
    const rows = stamps(start, 50, 60);
    const plain = goodRoom(room(rows)).temperature_C;
    const fahrenheit = [
      "time;temperature (°F);RH [-]",
      ...rows.map(({ standard, text }) => `${text};${(mark(standard) * 1.8 + 32).toFixed(4).replace(".", ",")};0,45`),
    ].join("\r\n");
    const log = goodRoom("\ufeff" + fahrenheit);
    plain.forEach((value, k) => expect(Math.abs(log.temperature_C[k]! - value)).toBeLessThan(1e-3));
    expect(log.relativeHumidity[3]).toBeCloseTo(0.45, 12);
  });

  test("on daylight-saving clocks is put back to standard time, both jumps", () => {
    // US rule: forward on 12 March 2023 at 2:00, back on 5 November 2023 at 2:00 daylight-saving time (1:00 standard).
    const forward = minutesOfDate(2023, 3, 12, 120);
    const back = minutesOfDate(2023, 11, 5, 60);
    const summer = (standard: number): number => (standard >= forward && standard < back ? 60 : 0);
    for (const step of [15, 30, 60]) {
      const rows = stamps(start - 60 + step, (8760 * 60) / step, step, summer);
      expect(new Set(rows.map(({ text }) => text)).size).toBeLessThan(rows.length);
      const log = goodRoom(room(rows));
      expect(log.hours, `step ${step}`).toBe(8760);
      for (let k = 1; k < 8760; k += 7)
        expect(
          Math.abs(log.temperature_C[k]! - mark(start + 60 * k - (step < 60 ? 30 - step / 2 : 0))),
          `step ${step}, hour ${k}`,
        ).toBeLessThan(0.05);
      expect(
        log.issues.some((issue) => /daylight-saving/.test(issue.message) && /2023-03-12 03:00/.test(issue.message)),
      ).toBe(true);
    }
  });

  test("that begins in summer time is recognised by the step back alone", () => {
    const from = minutesOfDate(2023, 9, 1, 0);
    const back = minutesOfDate(2023, 11, 5, 60);
    const log = goodRoom(room(stamps(from, 24 * 100, 60, (standard) => (standard < back ? 60 : 0))));
    for (let k = 5; k < 2300; k += 11) expect(Math.abs(log.temperature_C[k]! - mark(from + 60 * k))).toBeLessThan(1e-3);
  });

  test("with offsets from UTC needs no guess", () => {
    const rows = stamps(start, 100, 60).map(({ standard, text }) => ({
      standard,
      text: `${text.replace(" ", "T")}:00-05:00`,
    }));
    const log = goodRoom(room(rows));
    expect(Math.abs(log.temperature_C[10]! - mark(start + 600))).toBeLessThan(1e-3);
  });

  test("with an hour missing on an ordinary day is not taken for a clock change", () => {
    const rows = stamps(start, 24 * 60, 60).filter((_, k) => k !== 24 * 40 + 1);
    const log = goodRoom(room(rows));
    expect(log.issues.some((issue) => /daylight/.test(issue.message))).toBe(false);
    expect(log.issues.some((issue) => /1 gaps were filled/.test(issue.message))).toBe(true);
  });

  test("with a gap of seven hours is refused, of six filled and listed", () => {
    const rows = stamps(start, 500, 60);
    goodRoom(room(rows.filter((_, k) => k < 100 || k >= 106)));
    const read = readLoggedRoom("room.csv", room(rows.filter((_, k) => k < 100 || k >= 107)));
    expect(read.ok).toBe(false);
    expect(read.issues.some((issue) => /longer than 6 h from 5 Jan 05:00 \(7 h\)/.test(issue.message))).toBe(true);
  });

  test("without units, without humidity, without dates or with unknown units is refused with the remedy", () => {
    const cases: [string, RegExp][] = [
      ["time,temperature,rh\n2023-01-01 00:00,20,40\n2023-01-01 01:00,20,40", /no unit/],
      ["time,temperature\n-,degC\n2023-01-01 00:00,20\n2023-01-01 01:00,20", /no humidity/],
      ["temperature,rh\ndegC,%\n20,40", /No column is headed date or time/],
      ["time,temperature,rh\n-,furlong,%\n2023-01-01 00:00,20,40", /"furlong" is not known/],
      ["time,temperature,rh\n-,degC,%\nsoon,20,40\nlater,20,40", /fewer than two dated rows/],
      ["time,apples,pears\n-,degC,%\n2023-01-01 00:00,20,40", /No column is known/],
    ];
    for (const [text, message] of cases) {
      const read = readLoggedRoom("room.csv", text);
      expect(read.ok, text).toBe(false);
      expect(
        read.issues.some((issue) => message.test(issue.message)),
        `${text} -> ${read.issues.map((issue) => issue.message).join("|")}`,
      ).toBe(true);
    }
  });

  test("names line and column of a value that cannot be", () => {
    const rows = room(stamps(start, 30, 60)).split("\n");
    rows[10] = rows[10]!.replace(/,[^,]*,45/, ",999,45");
    const read = readLoggerTable("room.csv", rows.join("\n"));
    expect(read.issues.find((issue) => /999/.test(issue.message))?.path).toBe("line 11, column 2 (dry-bulb)");
  });

  test("reads slashed dates day first once a day over 12 shows it, and says how it read", () => {
    const rows = [
      "time,temperature,rh",
      "-,degC,%",
      "11/01/2023 00:00,20,40",
      "12/01/2023 00:00,20,40",
      "13/01/2023 00:00,20,40",
    ];
    const log = goodRoom(rows.join("\n"));
    expect(log.firstHour).toBe(10 * 24 - 1);
    expect(log.issues.some((issue) => /day\/month\/year/.test(issue.message))).toBe(true);
  });
});

describe("logged outdoor weather", () => {
  const made = syntheticYear(placeById("burlington-vt")!, { kind: "typical", seed: 2 });
  const head = ["# place: A garden", "# latitude: 44.47", "# longitude: -73.15", "# utc: -5", "# elevation: 101"];
  const names = "time,temperature,dew point,global sun,wind speed,wind direction,rain";
  const units = "-,degF,degF,W/m2,mph,deg,in";
  /** From 1 July 2023 to 30 June 2024: a year that wraps, with a 29 February. */
  const from = minutesOfDate(2023, 7, 1, 60);
  const body = Array.from({ length: 8784 }, (_, k) => {
    const standard = from + 60 * k;
    const { month, day } = dateOfDays(Math.floor((standard - 60) / 1440));
    const ofYear =
      [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334][month - 1]! + Math.min(day, month === 2 ? 28 : 31) - 1;
    const hour = ofYear * 24 + (((standard - 60) / 60) % 24);
    const f = (c: number): string => (c * 1.8 + 32).toFixed(3);
    return [
      stampText(standard),
      f(made.temperature_C[hour]!),
      f(made.dewPoint_C[hour]!),
      made.globalHorizontal_Wm2[hour]!.toFixed(1),
      (made.windSpeed_ms[hour]! / 0.44704).toFixed(3),
      made.windDirection_deg[hour]!.toFixed(0),
      (made.rain_mm[hour]! / 25.4).toFixed(5),
    ].join(",");
  });
  const text = [...head, names, units, ...body].join("\n");

  test("becomes a year from January to December, whatever month it starts in", () => {
    const read = readWeatherFile("garden.csv", text);
    if (!read.ok) throw new Error(read.issues.map((issue) => issue.message).join("\n"));
    const year = read.value;
    expect(year.kind).toBe("logged");
    expect(year.place.name).toBe("A garden");
    for (let k = 0; k < 8760; k += 31) {
      expect(Math.abs(year.temperature_C[k]! - made.temperature_C[k]!)).toBeLessThan(0.001);
      expect(Math.abs(year.windSpeed_ms[k]! - made.windSpeed_ms[k]!)).toBeLessThan(0.001);
    }
    expect(Math.abs(year.rain_mm.reduce((a, b) => a + b, 0) - 935)).toBeLessThan(1);
    expect(year.issues.some((issue) => /29 February/.test(issue.message))).toBe(true);
    expect(year.issues.some((issue) => /split by the hour's clearness/.test(issue.message))).toBe(true);
    expect(year.issues.some((issue) => /infrared was missing/.test(issue.message))).toBe(true);
  });

  test("of less than a year, without a place, or without sun is refused", () => {
    const short = readWeatherFile("x", [...head, names, units, ...body.slice(0, 2000)].join("\n"));
    expect(short.ok).toBe(false);
    expect(short.issues.some((issue) => /covers 83\.3 days/.test(issue.message))).toBe(true);
    const nowhere = readWeatherFile("x", [names, units, ...body].join("\n"));
    expect(nowhere.ok).toBe(false);
    expect(nowhere.issues.some((issue) => issue.path.includes("latitude") && /# latitude/.test(issue.remedy))).toBe(
      true,
    );
    const dark = readWeatherFile("x", [...head, names.replace("global sun", "thing"), units, ...body].join("\n"));
    expect(dark.ok).toBe(false);
    expect(dark.issues.some((issue) => /no global horizontal sun/.test(issue.message))).toBe(true);
  });
});
