import { areaShares, nameOfPath, type Option, type Path, type WholeWall } from "../../solver/index.ts";
import { WrittenField } from "../fields/index.ts";
import { onOption } from "../state/edits.ts";
import { applyEdit, view, type Units } from "../state/index.ts";
import { parseShare, resistanceFigure, share, transmittanceText } from "../units/index.ts";
import "./paths-table.css";

/** Gives a path its share; the largest other path takes up the rest, so that all shares add up to the whole. */
function changeShare(option: Option, path: Path, text: string): string | null {
  const read = parseShare(text);
  if (!read.ok) return read.message;
  const shares = areaShares(option);
  const others = shares.filter((other) => other.path !== path.id);
  const widest = [...others].sort((one, other) => other.share - one.share)[0];
  const rest = 1 - read.value - others.reduce((sum, other) => sum + (other === widest ? 0 : other.share), 0);
  if (widest ? rest < -1e-9 : Math.abs(rest) > 1e-9) {
    return widest
      ? "All shares together would exceed 100 %. Lower another path first."
      : "The only path is all of the wall: 100 %.";
  }
  const round = (value: number): number => Math.round(value * 1e6) / 1e6;
  applyEdit(
    `Change the share of ${nameOfPath(path).toLowerCase()} in ${option.id}`,
    onOption(option.id, (found) => ({
      ...found,
      paths: found.paths.map((candidate) => {
        const own = shares.find((one) => one.path === candidate.id)!.share;
        const areaShare =
          candidate.id === path.id ? read.value : candidate.id === widest?.path ? Math.max(0, rest) : own;
        return { ...candidate, areaShare: round(areaShare) };
      }),
    })),
  );
  return null;
}

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
        <h2>Paths of {option.id}</h2>
        <WrittenField
          label={`Name of option ${option.id}`}
          text={option.name}
          width={210}
          onWrite={(name) => {
            if (name.trim() === "") return "The name is empty. Enter a name such as 2x6 with foam.";
            applyEdit(
              `Rename option ${option.id}`,
              onOption(option.id, (found) => ({ ...found, name: name.trim().slice(0, 200) })),
            );
            return null;
          }}
        />
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
                <td className="figure">
                  <WrittenField
                    label={`Share of the area, ${nameOfPath(candidate)}`}
                    text={heat ? share(heat.areaShare) : ""}
                    width={44}
                    align="right"
                    onWrite={(text) => changeShare(option, candidate, text)}
                  />
                </td>
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
