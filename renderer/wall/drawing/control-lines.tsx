import { outerFaces } from "../../section/index.ts";
import { roleLetters, type ControlRun } from "../control-roles.ts";
import type { Core, CoreLayout } from "./core-layout.ts";
import { spread } from "./spread.ts";
import "./control-lines.css";

/** Where a control line lies within a core: water on the outer face, vapour on the inner, air and thermal in the middle. */
function lineHeight(core: Core, layerId: string | null, role: ControlRun["role"], pxPerMetre: number): number | null {
  const at = core.layers.findIndex((layer) => layer.id === layerId);
  if (at < 0) return null;
  const face = core.y + outerFaces(core.layers)[at]! * pxPerMetre;
  const height = core.layers[at]!.thickness_m * pxPerMetre;
  if (role === "water") return face - 2.5;
  if (role === "vapour") return face + height + (height === 0 ? 3.5 : 0);
  return face + height / 2 + (height === 0 ? 2 : 0);
}

interface Drawn {
  readonly line: string;
  readonly ghost: string;
  readonly rings: readonly { readonly x: number; readonly y: number }[];
  readonly end: number;
}

/** The line through all cores: it jogs in the gaps, stops at a break with a ring, and goes on as a ghost. */
function trace(run: ControlRun, layout: CoreLayout): Drawn | null {
  const { cores, pxPerMetre } = layout;
  const heights = cores.map((core, index) => lineHeight(core, run.layerIds[index] ?? null, run.role, pxPerMetre));
  const known = heights.find((height) => height !== null);
  if (known === undefined || known === null) return null;
  let line = "";
  let ghost = "";
  const rings: { x: number; y: number }[] = [];
  let y = known;
  let drawing = false;
  cores.forEach((core, index) => {
    const before = cores[index - 1];
    const from = before ? (core.adjoins ? core.x : (before.x + before.width + core.x) / 2) : -6;
    const next = cores[index + 1];
    const to = next ? (next.adjoins ? next.x : (core.x + core.width + next.x) / 2) : layout.width + 12;
    const here = heights[index] ?? null;
    const told = run.brokenBefore[index] ?? false;
    const broken = here === null || told;
    if (told && index > 0) rings.push({ x: from, y });
    if (here === null) {
      ghost += `M${from} ${y}H${to}`;
      drawing = false;
      return;
    }
    line += drawing && !broken ? `V${here}H${to}` : `M${from} ${here}H${to}`;
    y = here;
    drawing = true;
  });
  return { line, ghost, rings, end: y };
}

/** Water, air, vapour and thermal control as four lines running through the paths, with a letter at the end of each. */
export function ControlLines({ runs, layout }: { runs: readonly ControlRun[]; layout: CoreLayout }) {
  const traced = runs.flatMap((run) => {
    const drawn = trace(run, layout);
    return drawn ? [{ role: run.role, ...drawn }] : [];
  });
  const inOrder = [...traced].sort((one, other) => one.end - other.end);
  const places = spread(
    inOrder.map(({ end }) => end),
    19,
    0,
  );
  const x = layout.width + 16;
  return (
    <g className="control-lines">
      {[...traced].reverse().map(({ role, line, ghost }) => (
        <g key={role} className={`control control-${role}`}>
          <path className="control-line" d={line} />
          {ghost && <path className="control-ghost" d={ghost} />}
        </g>
      ))}
      {inOrder.map(({ role, end }, index) => (
        <g key={role} className={`control control-${role}`}>
          <path className="control-leader" d={`M${layout.width + 12} ${end}L${x} ${places[index]!}`} />
          <rect className="control-box" x={x} y={places[index]! - 8} width={16} height={16} />
          <text className="control-letter" x={x + 8} y={places[index]! + 4.5}>
            {roleLetters[role]}
          </text>
        </g>
      ))}
      {traced.flatMap(({ role, rings }) =>
        rings.map((ring, index) => (
          <g key={`${role}-${index}`} className="control-break" transform={`translate(${ring.x} ${ring.y})`}>
            <circle r={8.5} />
            <path d="M-4 4.5L0 -4.5M0 4.5L4 -4.5" />
          </g>
        )),
      )}
    </g>
  );
}

/** A short piece of a role's line, for the register. */
export function LineSample({ role }: { role: ControlRun["role"] }) {
  return (
    <svg className={`control control-${role} line-sample`} width="46" height="10" aria-hidden="true">
      <path className="control-line" d="M1 5H45" />
    </svg>
  );
}
