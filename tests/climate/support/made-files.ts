import { daysInMonth, type WeatherYear } from "../../../climate/index.ts";

/** An EPW text made from a weather year, each row as its 35 fields so that a test can damage what it likes. */
export function epwRows(year: WeatherYear): string[][] {
  const rows: string[][] = [];
  let k = 0;
  daysInMonth.forEach((days, month) => {
    for (let day = 1; day <= days; day++)
      for (let hour = 1; hour <= 24; hour++, k++) {
        const row = new Array<string>(35).fill("0");
        // Each month from another year, as typical years have it.
        [1997, month + 1, day, hour, 60].forEach(
          (value, field) => (row[field] = String(field === 0 ? value - ((month * 7) % 12) : value)),
        );
        row[5] = "?9?9?9?9E0";
        row[6] = year.temperature_C[k]!.toFixed(1);
        row[7] = year.dewPoint_C[k]!.toFixed(1);
        row[8] = String(Math.round(year.relativeHumidity[k]! * 100));
        row[9] = String(Math.round(year.pressure_Pa[k]!));
        row[12] = String(Math.round(year.skyInfrared_Wm2[k]!));
        row[13] = String(Math.round(year.globalHorizontal_Wm2[k]!));
        row[14] = String(Math.round(year.directNormal_Wm2[k]!));
        row[15] = String(Math.round(year.diffuseHorizontal_Wm2[k]!));
        row[20] = String(Math.round(year.windDirection_deg[k]!));
        row[21] = year.windSpeed_ms[k]!.toFixed(1);
        row[22] = String(Math.round(year.cloudCover[k]! * 10));
        row[23] = row[22];
        row[33] = year.rain_mm[k]!.toFixed(1);
        rows.push(row);
      }
  });
  return rows;
}

export const epwHead = (year: WeatherYear, location?: string): string[] => [
  location ??
    `LOCATION,Testville,VT,USA,made,000000,${year.place.latitude_deg},${year.place.longitude_deg},${year.place.utcOffset_h},${year.place.elevation_m}`,
  "DESIGN CONDITIONS,0",
  "TYPICAL/EXTREME PERIODS,0",
  "GROUND TEMPERATURES,0",
  "HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0",
  "COMMENTS 1,made for a test",
  "COMMENTS 2,",
  "DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31",
];

export const joinEpw = (head: readonly string[], rows: readonly (readonly string[])[], end = "\n"): string =>
  [...head, ...rows.map((row) => row.join(","))].join(end) + end;

/** A TMY3 text from the rows of an EPW. */
export function tmy3Text(
  year: WeatherYear,
  rows: readonly (readonly string[])[],
  rain: (row: readonly string[]) => string,
): string {
  const head =
    "Date (MM/DD/YYYY),Time (HH:MM),GHI (W/m^2),DNI (W/m^2),DHI (W/m^2),OpqCld (tenths),Dry-bulb (C),Dew-point (C),RHum (%),Pressure (mbar),Wdir (degrees),Wspd (m/s),Lprecip depth (mm)";
  const two = (text: string): string => text.padStart(2, "0");
  const body = rows.map((row) =>
    [
      `${two(row[1]!)}/${two(row[2]!)}/${row[0]}`,
      `${two(row[3]!)}:00`,
      row[13],
      row[14],
      row[15],
      row[23],
      row[6],
      row[7],
      row[8],
      String(Number(row[9]) / 100),
      row[20],
      row[21],
      rain(row),
    ].join(","),
  );
  const { latitude_deg, longitude_deg, utcOffset_h, elevation_m } = year.place;
  return (
    [`000000,"TESTVILLE, NORTH",VT,${utcOffset_h},${latitude_deg},${longitude_deg},${elevation_m}`, head, ...body].join(
      "\n",
    ) + "\n"
  );
}
