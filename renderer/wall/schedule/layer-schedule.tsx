import { useState, type DragEvent } from "react";
import { nameOfPath, type ControlRole, type MaterialLookup, type Option, type Path } from "../../../solver/index.ts";
import { onLayer, pathsWithLayer, shiftLayer } from "../../state/edits.ts";
import { applyEdit, useViewStore, view, type Units } from "../../state/index.ts";
import { Length, lengthText, lengthUnit, permeanceFigure, permeanceUnit, resistanceFigure } from "../../units/index.ts";
import { controlRoles, roleLetters, roleTitles } from "../control-roles.ts";
import { layerFigures, tabulatedConductivity } from "../layer-figures.ts";
import { ThicknessCell } from "./thickness-cell.tsx";
import { useGridFocus } from "./use-grid-focus.ts";
import "./layer-schedule.css";

interface LayerScheduleProps {
  readonly option: Option;
  readonly path: Path;
  readonly lookup: MaterialLookup;
  readonly units: Units;
  readonly chosen: string | null;
  /** Roles that the program deduced, shown where the user has set none. */
  readonly deduced: Readonly<Partial<Record<ControlRole, string | null>>>;
  readonly resistance_m2KW: number | null;
  readonly note: string;
}

const columns = { material: 0, thickness: 1, firstRole: 2 };

/** The layers of one path, outside first: chosen, sized, moved and given their roles from the keyboard. */
export function LayerSchedule(props: LayerScheduleProps) {
  const { option, path, lookup, units, chosen, deduced, resistance_m2KW, note } = props;
  const [column, setColumn] = useState(0);
  const [fault, setFault] = useState<string | null>(null);
  const throughAll = useViewStore((state) => state.throughAll);
  const [dragged, setDragged] = useState<string | null>(null);
  const rowAt = Math.max(
    0,
    path.layers.findIndex((layer) => layer.id === chosen),
  );
  const { grid, onKeyDown } = useGridFocus(path.layers.length, 6, { row: rowAt, column }, (place) => {
    setColumn(place.column);
    view({ layer: path.layers[place.row]!.id });
  });
  const cell = (row: number, at: number) => ({
    tabIndex: row === rowAt && at === column ? 0 : -1,
    "data-row": row,
    "data-column": at,
    onFocus: () => {
      setColumn(at);
      view({ layer: path.layers[row]!.id });
    },
  });
  const figures = path.layers.map((layer) => layerFigures(layer, lookup));
  const total_m = figures.reduce((sum, { thickness_m }) => sum + (thickness_m ?? 0), 0);
  const shared = path.layers[rowAt] ? pathsWithLayer(option, path, path.layers[rowAt].id) : [];

  const changeThickness = (layerId: string, row: number, thickness_m: number): void =>
    applyEdit(
      `Change layer ${row + 1} of ${option.id} from ${lengthText(figures[row]!.thickness_m ?? 0, units)} to ${lengthText(thickness_m, units)}`,
      onLayer(option.id, path.id, layerId, throughAll, (layer) => ({ ...layer, thickness_m })),
    );
  const toggleRole = (layerId: string, row: number, role: ControlRole): void => {
    const has = path.layers[row]!.roles?.includes(role) ?? false;
    applyEdit(
      `${has ? "Take" : "Give"} layer ${row + 1} of ${option.id} ${has ? "from" : "to"} ${roleTitles[role].toLowerCase()} control`,
      onLayer(option.id, path.id, layerId, throughAll, (layer) => ({
        ...layer,
        roles: has ? (layer.roles ?? []).filter((other) => other !== role) : [...(layer.roles ?? []), role],
      })),
    );
  };
  const drop = (event: DragEvent, onto: string): void => {
    event.preventDefault();
    setDragged(null);
    const from = path.layers.findIndex((layer) => layer.id === dragged);
    const to = path.layers.findIndex((layer) => layer.id === onto);
    if (dragged === null || from < 0 || from === to) return;
    applyEdit(`Move layer ${from + 1} of ${option.id} to place ${to + 1}`, (project) => {
      let moved = project;
      const step = to > from ? 1 : -1;
      for (let at = from; at !== to; at += step)
        moved = shiftLayer(option.id, path.id, dragged, step, throughAll)(moved);
      return moved;
    });
    view({ layer: dragged });
  };

  return (
    <>
      <div className="head">
        <h2>Layer schedule, {nameOfPath(path).toLowerCase()}</h2>
        <span className="note">outside first</span>
      </div>
      <table className="table schedule" role="grid" aria-label="Layer schedule" ref={grid} onKeyDown={onKeyDown}>
        <thead>
          <tr>
            <th colSpan={2}>
              <span className="schedule-indent">Material</span>
            </th>
            <th className="figure">{lengthUnit(units)}</th>
            <th className="figure">{units === "si" ? "RSI" : "R"}</th>
            <th className="figure">{permeanceUnit(units)}</th>
            {controlRoles.map((role) => (
              <th key={role} className={`role-head control-${role}`} aria-label={`${roleTitles[role]} control`}>
                {roleLetters[role]}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {path.layers.map((layer, row) => {
            const { material, name, remark, thickness_m, resistance_m2KW: r, permeance, ventilated } = figures[row]!;
            const perm = permeance && [...new Set(permeance.map((value) => permeanceFigure(value, units)))].join("–");
            return (
              <tr
                key={layer.id}
                className={layer.id === dragged ? "schedule-row dragged" : "schedule-row"}
                aria-selected={layer.id === chosen}
                onClick={() => view({ layer: layer.id })}
                onDragOver={(event) => event.preventDefault()}
                onDrop={(event) => drop(event, layer.id)}
              >
                <td className="schedule-number">
                  <span
                    className="keynote-mark"
                    draggable
                    title="Drag to move this layer"
                    onDragStart={() => setDragged(layer.id)}
                    onDragEnd={() => setDragged(null)}
                  >
                    {row + 1}
                  </span>
                </td>
                <td>
                  <button
                    {...cell(row, columns.material)}
                    type="button"
                    className="cell-button cell-material"
                    aria-label={`Layer ${row + 1}: ${material?.name ?? name}. Choose another material`}
                    onClick={() => view({ layer: layer.id, askingMaterial: "replace" })}
                  >
                    <span className="cell-name">{name}</span>
                    <span className="note cell-remark">{material ? remark : "nobody knows this material"}</span>
                  </button>
                </td>
                <td className="figure">
                  {thickness_m === null ? (
                    <span {...cell(row, columns.thickness)} className="cell-none" role="note" aria-label="No thickness">
                      —
                    </span>
                  ) : (
                    <ThicknessCell
                      thickness_m={thickness_m}
                      units={units}
                      conductivity_WmK={material ? tabulatedConductivity(material) : null}
                      label={`Thickness of layer ${row + 1}, ${name}`}
                      cell={cell(row, columns.thickness)}
                      onChange={(value) => changeThickness(layer.id, row, value)}
                      onFault={(message) => setFault(message && `Layer ${row + 1}, ${name}: ${message}`)}
                    />
                  )}
                </td>
                <td className="figure">{r === null ? "—" : resistanceFigure(r, units)}</td>
                <td className="figure">{ventilated ? <span className="quiet">vented</span> : (perm ?? "—")}</td>
                {controlRoles.map((role, at) => {
                  const set = layer.roles?.includes(role) ?? false;
                  const taken = !set && deduced[role] === layer.id;
                  return (
                    <td key={role} className="role-cell">
                      <button
                        {...cell(row, columns.firstRole + at)}
                        type="button"
                        className={`role-mark control-${role}`}
                        data-state={set ? "set" : taken ? "deduced" : "none"}
                        aria-pressed={set}
                        aria-label={`Layer ${row + 1} is the ${roleTitles[role].toLowerCase()} control${taken ? ", deduced" : ""}`}
                        onClick={() => toggleRole(layer.id, row, role)}
                      >
                        {set || taken ? roleLetters[role] : "·"}
                      </button>
                    </td>
                  );
                })}
              </tr>
            );
          })}
        </tbody>
        <tfoot>
          <tr>
            <th colSpan={2} scope="row">
              <span className="schedule-indent">{nameOfPath(path)}, with films</span>
            </th>
            <td className="figure">
              <Length length_m={total_m} units={units} />
            </td>
            <td className="figure">{resistance_m2KW === null ? "—" : resistanceFigure(resistance_m2KW, units)}</td>
            <td colSpan={5} className="figure schedule-note">
              {note}
            </td>
          </tr>
        </tfoot>
      </table>
      {fault && (
        <p className="remedy" role="alert">
          {fault}
        </p>
      )}
      <div className="schedule-verbs">
        <button
          type="button"
          className="verb"
          onClick={() => view({ layer: path.layers[rowAt]!.id, askingMaterial: "add" })}
        >
          Add a layer inward
        </button>
        <button
          type="button"
          className="verb schedule-card"
          onClick={() => view({ layer: path.layers[rowAt]!.id, openDialog: "material" })}
        >
          Card
        </button>
        {shared.length > 1 && (
          <label className="schedule-through">
            <input
              type="checkbox"
              checked={throughAll}
              onChange={(event) => view({ throughAll: event.target.checked })}
            />
            Layer {rowAt + 1} in {shared.length === 2 ? "both" : `all ${shared.length}`} paths
          </label>
        )}
      </div>
    </>
  );
}
