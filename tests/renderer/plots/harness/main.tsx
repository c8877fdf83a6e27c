/// <reference types="vite/client" />
/**
 * Charts by themselves, for looking at: ?sheet=year|pair, &option=0|1, &dark, &units=si, &state=empty|stale|running|failed.
 * Figures are made up, or with &results taken from a results.json laid beside this page.
 */
import "@fontsource-variable/encode-sans/wdth.css";
import "../../../../renderer/style/tokens.css";
import "../../../../renderer/style/type.css";
import { StrictMode, useState } from "react";
import { createRoot } from "react-dom/client";
import { PairView } from "../../../../renderer/side-by-side/pair-view.tsx";
import { YearView } from "../../../../renderer/year/year-view.tsx";
import type { RunView } from "../../../../renderer/state/index.ts";
import {
  casesOf,
  demoProject,
  findingsOf,
  leadSentence,
  wholeWall,
  type Case,
  type RunResult,
} from "../../../../solver/index.ts";
import { madeUpResult } from "./made-up-result.ts";

const asked = new URLSearchParams(location.search);
if (asked.has("dark")) document.documentElement.dataset["theme"] = "dark";
const made = casesOf(demoProject);
if (!made.ok) throw new Error(made.issues.map(({ message }) => message).join("\n"));
const bays = made.value.filter(({ path }) => path === "bay");
/** &options=8 repeats the two walls under further letters. */
const cases = Array.from({ length: Number(asked.get("options") ?? bays.length) }, (_, index) => ({
  ...bays[index % bays.length]!,
  option: "ABCDEFGH".charAt(index),
}));

/** Results of real runs by option, their series as base64. */
async function realResults(): Promise<Record<string, RunResult>> {
  const text = await (await fetch("results.json")).text();
  return JSON.parse(text, (_key, value: unknown) => {
    const packed = (value as { f32?: string } | null)?.f32;
    return packed === undefined
      ? value
      : new Float32Array(Uint8Array.from(atob(packed), (c) => c.charCodeAt(0)).buffer);
  }) as Record<string, RunResult>;
}
const real = asked.has("results") ? await realResults() : {};
const resultOf = (aCase: Case): RunResult => real[aCase.option] ?? madeUpResult(aCase);

function runOf(aCase: Case): RunView {
  switch (asked.get("state")) {
    case "empty":
      return { status: "empty", issues: [] };
    case "stale":
      return {
        status: "stale",
        issues: [],
        case: aCase,
        result: resultOf(aCase),
        staleBecause: "Change thickness, layer 3",
      };
    case "running":
      return {
        status: "running",
        issues: [],
        case: aCase,
        result: resultOf(aCase),
        progress: { done: 14000, of: 17520, startedAt: Date.now() - 3000 },
      };
    case "failed":
      return {
        status: "failed",
        issues: [],
        case: aCase,
        result: madeUpResult(aCase, 137),
        failure: {
          message: "The step could not be solved at the gypsum's inner face: 130 % RH was asked for inside.",
          remedy: "Enter a room humidity of 100 % or less.",
        },
      };
    default:
      return { status: "finished", issues: [], case: aCase, result: resultOf(aCase) };
  }
}

const finding = (statement: string) => ({
  id: statement,
  probe: "",
  statement,
  measured: 90,
  unit: "%",
  limit: 95,
  margin: 5,
  when: "21 Jan – 20 Feb",
  holds: true,
  source: "limit set by you for this project",
  swayedBy: [],
});
const findings = [
  "The sheathing's inner face is damp for a month, not wet.",
  "The sheathing takes up water all winter and gives it back by June.",
  "Frost reaches the sheathing on eight days, and goes no deeper.",
  "Drying runs to the room: 78 % of it from March to June.",
  "A leak at one outlet would break this first.",
].map(finding);

function Year(): React.JSX.Element {
  const [day, setDay] = useState(136);
  const aCase = cases[Number(asked.get("option") ?? 1)]!;
  const [run] = useState(() => runOf(aCase));
  const told = real[aCase.option] && run.result ? findingsOf(aCase, run.result, { units: "ip" }) : null;
  return (
    <YearView
      run={run}
      planned={aCase}
      lead={
        told
          ? leadSentence(aCase, run.result!, told, { units: "ip" })
          : "The sheathing peaks at 13.5 % in March, is damp only on its inner face, and has dried to the room by the end of May."
      }
      findings={told ?? findings}
      cautions={["Not modelled: corners, bolts, water running down inside the wall, leaks that travel sideways."]}
      units={(asked.get("units") as "ip") ?? "ip"}
      day={day}
      onDay={setDay}
      onScale={() => undefined}
      fileName="charts"
    />
  );
}

function Pair(): React.JSX.Element {
  const [day, setDay] = useState(136);
  const [pair, setPair] = useState<readonly [string, string]>(["A", "B"]);
  const [options] = useState(() =>
    cases.map((aCase, index) => ({
      id: aCase.option,
      name: aCase.optionName,
      run: runOf(aCase),
      planned: aCase,
      wall: wholeWall(demoProject.options[index % 2]!, demoProject),
      price_perM2: null,
      carbon_kgCO2ePerM2: null,
    })),
  );
  return (
    <PairView
      options={options}
      pair={pair}
      onPair={setPair}
      units={(asked.get("units") as "ip") ?? "ip"}
      day={day}
      onDay={setDay}
      onScale={() => undefined}
    />
  );
}

createRoot(document.getElementById("root")!).render(
  <StrictMode>
    <div style={{ height: "100%", display: "grid", gridTemplateRows: "40px minmax(0,1fr) 44px" }}>
      <div style={{ borderBottom: "1px solid var(--ink)" }} />
      <main style={{ minHeight: 0, overflow: "auto" }}>{asked.get("sheet") === "pair" ? <Pair /> : <Year />}</main>
      <div style={{ borderTop: "1px solid var(--ink)" }} />
    </div>
  </StrictMode>,
);
