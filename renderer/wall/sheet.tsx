import { useEffect, useMemo } from "react";
import { boundary, checkProject, lookupFor, wallChecks, wholeWall } from "../../solver/index.ts";
import { useActiveOption, useActivePath, useProject, useUnits, useViewStore, view } from "../state/index.ts";
import { Shown } from "../shell/shown.tsx";
import { Sentence } from "../units/index.ts";
import { BoundaryRegister } from "./boundary-register.tsx";
import { ChecksList } from "./checks-list.tsx";
import { codeSettings } from "./code-settings.ts";
import { layOut, roomWithin } from "./drawing/core-layout.ts";
import { SectionDrawing } from "./drawing/section-drawing.tsx";
import { openingSentence } from "./opening-sentence.ts";
import { PathEditor } from "./path-editor.tsx";
import { PathsTable } from "./paths-table.tsx";
import { MaterialCard } from "./material-card.tsx";
import { LayerSchedule } from "./schedule/layer-schedule.tsx";
import { MaterialDialog } from "./schedule/material-dialog.tsx";
import { SwapsList } from "./swaps-list.tsx";
import { useSize } from "./use-size.ts";
import { controlRuns, deducedRoles } from "./wall-facts.ts";
import "./sheet.css";

/** The wall as its architect draws it: the paths cut to scale with their control lines, and the schedule that edits them. */
export default function WallSheet() {
  const project = useProject();
  const option = useActiveOption();
  const path = useActivePath();
  const units = useUnits();
  const layer = useViewStore((state) => state.layer);
  const [board, size] = useSize<HTMLDivElement>();
  const [register, registerSize] = useSize<HTMLDivElement>();
  const lookup = useMemo(() => lookupFor(project), [project]);
  const report = useMemo(() => boundary(option, project), [option, project]);
  const runs = useMemo(() => controlRuns(report), [report]);
  const whole = useMemo(() => wholeWall(option, project), [option, project]);
  const edition = useViewStore((state) => state.edition);
  const lines = useMemo(() => wallChecks(project, option, codeSettings(project, edition)), [project, option, edition]);
  const issues = useMemo(() => checkProject(project), [project]);
  const room = useMemo(
    () => roomWithin({ width: size.width, height: Math.max(360, size.height - registerSize.height - 8) }),
    [size, registerSize],
  );
  const { ratio } = useMemo(() => layOut(option, lookup, room), [option, lookup, room]);
  const chosen = path.layers.some((candidate) => candidate.id === layer) ? layer : (path.layers[0]?.id ?? null);

  const chosenLayer = path.layers.find((candidate) => candidate.id === chosen);
  const cardOpen = useViewStore((state) => state.openDialog === "material");

  useEffect(() => {
    view({ scale: `1:${ratio}, drawn in plan` });
  }, [ratio]);

  return (
    <div className="wall-sheet">
      <h1 className="lead wall-lead">
        <Sentence text={openingSentence(option, runs)} />
      </h1>
      <div className="wall-left" ref={board}>
        {size.width > 0 && (
          <SectionDrawing
            option={option}
            path={path}
            lookup={lookup}
            runs={runs}
            units={units}
            width={size.width}
            room={room}
            chosen={chosen}
            onChooseLayer={(id) => view({ layer: id })}
            onChoosePath={(id) => view({ path: id })}
          />
        )}
        <div ref={register}>
          <BoundaryRegister runs={runs} />
        </div>
      </div>
      <div className="wall-right">
        <section data-pane="Layer schedule" tabIndex={-1} aria-label="Layer schedule">
          <LayerSchedule
            key={`${option.id}/${path.id}`}
            option={option}
            path={path}
            lookup={lookup}
            units={units}
            chosen={chosen}
            deduced={deducedRoles(report, path)}
            resistance_m2KW={whole.paths.find((candidate) => candidate.id === path.id)?.R_m2KW ?? null}
            note=""
          />
        </section>
        <section data-pane="Paths" tabIndex={-1} aria-label="Paths">
          <PathsTable option={option} path={path} units={units} whole={whole} />
          <PathEditor key={`${option.id}/${path.id}`} option={option} path={path} report={report} />
        </section>
        <section className="wall-checks" data-pane="As drawn" tabIndex={-1} aria-label="As drawn, before any run">
          <ChecksList issues={issues} lines={lines} units={units} edition={edition} />
        </section>
        <section className="wall-swaps" data-pane="Swaps" tabIndex={-1} aria-label="Swaps the builder may make">
          <SwapsList units={units} />
        </section>
      </div>
      {chosenLayer && (
        <section className="wall-third" data-pane="Material card" tabIndex={-1} aria-label="Material card">
          <MaterialCard layer={chosenLayer} lookup={lookup} />
        </section>
      )}
      {chosenLayer && cardOpen && (
        <Shown title="Where the figures come from">
          <MaterialCard layer={chosenLayer} lookup={lookup} />
        </Shown>
      )}
      <MaterialDialog project={project} option={option} path={path} lookup={lookup} units={units} />
    </div>
  );
}
