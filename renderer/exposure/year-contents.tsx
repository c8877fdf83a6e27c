import type { Units } from "../state/index.ts";
import { sentence } from "../state/issue-words.ts";
import { figure, rainText, share, temperatureText, windText } from "../units/index.ts";
import { layMonthlyRain } from "./exposure-edits.ts";
import type { ExposureSurvey } from "./survey.ts";

/** What the year contains, before it is used: extremes, sums, repairs and doubts. */
export function YearContents({ survey, units }: { survey: ExposureSurvey; units: Units }) {
  const { annual, rain, climateZone, repairs, columns } = survey.report;
  const air = columns.find(({ column }) => column === "temperature_C");
  const incomplete = columns.filter(({ complete }) => complete < 0.9995);
  const frostDays = survey.coldest_C.filter((value) => value < 0).length;
  const degreeDays =
    units === "si"
      ? `${figure(annual.heating18_Kd, 0)} K d below 18 °C`
      : `${figure(annual.heating18_Kd * 1.8, 0)} °F d below 64.4 °F`;
  const rows: readonly (readonly [string, string])[] = [
    ["Mean of the year", `${temperatureText(annual.temperature_C, units, 1)}, ${share(annual.relativeHumidity)} RH`],
    ...(air
      ? ([
          ["Coldest hour", `${temperatureText(air.low, units)}, ${air.lowAt}`],
          ["Warmest hour", `${temperatureText(air.high, units)}, ${air.highAt}`],
        ] as const)
      : []),
    ["Heating degree days", degreeDays],
    ["Days with frost", String(frostDays)],
    ["Rain", `${rainText(rain.total_mm, units)}, ${share(rain.shareOfNormal)} of the normal of ${rain.nearest.name}`],
    ["Mean wind", windText(annual.wind_ms, units)],
    ["Computed zone, advice only", climateZone.computed],
  ];
  const said = [...new Set([...(rain.doubt ? [rain.doubt] : []), ...[...repairs, ...survey.issues].map(sentence)])];
  return (
    <section aria-label="What this year contains" data-pane="What this year contains" tabIndex={-1}>
      <div className="head">
        <h2>What this year contains</h2>
        <span className="note">
          {survey.kind === "synthetic" ? "synthetic" : survey.kind === "file" ? "from a file" : "logged"}
        </span>
      </div>
      <table className="table">
        <tbody>
          {rows.map(([name, value]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td className="figure">{value}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {incomplete.length > 0 && (
        <p className="secondary">
          Not complete:{" "}
          {incomplete.map(({ title, complete }) => `${title.toLowerCase()} ${share(complete)}`).join(", ")}.
        </p>
      )}
      {rain.doubt !== null && survey.kind === "file" && (
        <p>
          <button type="button" className="verb" onClick={() => layMonthlyRain(rain.nearest.id, rain.nearest.name)}>
            Lay the monthly rain of {rain.nearest.name} over the year
          </button>
        </p>
      )}
      {said.length > 0 && (
        <ul className="year-doubts">
          {said.map((words) => (
            <li key={words} className="secondary">
              {words}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
