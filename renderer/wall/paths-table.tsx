import { nameOfPath, type Option, type Path, type WholeWall } from "../../solver/index.ts";
import { view, type Units } from "../state/index.ts";
import { resistanceFigure, share, transmittanceText } from "../units/index.ts";
import "./paths-table.css";

interface PathsTableProps {
  readonly option: Option;
  readonly path: Path;
  readonly units: Units;
  readonly whole: WholeWall;
}

/** How much of the wall each path is, and how much of the heat leaves through it. */
export function PathsTable({ option, path, units, whole }: PathsTableProps) {
  const most = Math.max(...whole.paths.map(({ heatShare }) => heatShare), 0.01);
  return (
    <>
      <div className="head">
        <h2>Paths</h2>
        <span className="note">framing {share(whole.framingShare)}</span>
      </div>
      <table className="table paths">
        <thead>
          <tr>
            <th>
              <span className="visually-hidden">Path</span>
            </th>
            <th className="figure">of area</th>
            <th className="figure">{units === "si" ? "RSI" : "R"}</th>
            <th className="paths-heat">of heat loss</th>
          </tr>
        </thead>
        <tbody>
          {option.paths.map((candidate) => {
            const heat = whole.paths.find(({ id }) => id === candidate.id);
            return (
              <tr key={candidate.id}>
                <th scope="row">
                  <button
                    type="button"
                    className="cell-button path-button"
                    aria-pressed={candidate.id === path.id}
                    onClick={() => view({ path: candidate.id })}
                  >
                    {nameOfPath(candidate)}
                  </button>
                </th>
                <td className="figure">{heat ? share(heat.areaShare) : "—"}</td>
                <td className="figure">{heat ? resistanceFigure(heat.R_m2KW, units) : "—"}</td>
                <td className="paths-heat">
                  {heat && (
                    <>
                      <span className="heat-bar" style={{ width: `${(heat.heatShare / most) * 68}%` }} />{" "}
                      <span className="note">{share(heat.heatShare)}</span>
                    </>
                  )}
                </td>
              </tr>
            );
          })}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">Whole wall</th>
            <td className="figure">100 %</td>
            <td className="figure">{resistanceFigure(whole.R_m2KW, units)}</td>
            <td className="paths-heat paths-u">{transmittanceText(whole.U_Wm2K, units)}</td>
          </tr>
        </tfoot>
      </table>
      <p className="note">
        By {whole.method}.{whole.notes.map((line) => ` ${line}`)}
      </p>
    </>
  );
}
