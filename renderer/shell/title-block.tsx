import type { ReactNode } from "react";
import { useActiveOption, useActivePath, useProject, useRun, useViewStore, view } from "../state/index.ts";
import { nameOfPath } from "../../solver/index.ts";
import { RunCell } from "./run-cell.tsx";
import { sheetCount, sheets } from "./sheets.ts";
import { siteWords } from "./site-words.ts";
import "./title-block.css";

function Cell({ name, className, children }: { name: string; className?: string; children: ReactNode }) {
  return (
    <div className={`block-cell ${className ?? ""}`}>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}

/** The foot of the sheet: what is drawn, of what, under which weather, and how fresh it is. */
export function TitleBlock() {
  const project = useProject();
  const option = useActiveOption();
  const path = useActivePath();
  const run = useRun(option.id, path.id);
  const sheet = useViewStore((state) => state.sheet);
  const scale = useViewStore((state) => state.scale);
  const number = sheets.find((candidate) => candidate.id === sheet)?.number ?? 1;

  return (
    <footer className="title-block" data-pane="Title block" tabIndex={-1} aria-label="Title block">
      <dl>
        <Cell name="Project" className="block-project">
          {project.name}
        </Cell>
        <Cell name="Option">
          {option.id} {option.name}
        </Cell>
        <Cell name="Path">
          <select
            className="block-select"
            aria-label="Path in view"
            value={path.id}
            onChange={(event) => view({ path: event.target.value })}
          >
            {option.paths.map((candidate) => (
              <option key={candidate.id} value={candidate.id}>
                {nameOfPath(candidate)}
                {candidate.areaShare === undefined ? "" : `, ${Math.round(candidate.areaShare * 100)} %`}
              </option>
            ))}
          </select>
        </Cell>
        <Cell name="Site, year, face">{siteWords(project)}</Cell>
        <Cell name="Run" className="block-run">
          <RunCell run={run} />
        </Cell>
        <Cell name="Scale">{scale || "as noted"}</Cell>
        <Cell name="Sheet" className="block-sheet">
          <span className="block-number">{number}</span> <span className="quiet">of {sheetCount}</span>
        </Cell>
      </dl>
    </footer>
  );
}
