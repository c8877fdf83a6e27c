import { cpus } from "node:os";
import { bench, describe } from "vitest";
import {
  casesOf,
  demoProject,
  howThick,
  loadsOf,
  simulate,
  weatherOf,
  type Case,
  type RunResult,
} from "../../solver/index.ts";

// Seconds, steps and memory of the march, and how far its answers stand from a run refined until they no longer change: speed that is
// bought with error shows at once. Compare only figures of one machine; note them in DEVELOPERS.md with the machine.

const cases = casesOf({ ...demoProject, run: { ...demoProject.run, years: 1 } });
if (!cases.ok) throw new Error("the demo has issues");
const weather = weatherOf(demoProject.site!.weather, {});
if (!weather.ok) throw new Error("the demo's weather has issues");
const year = weather.value;

function run(aCase: Case): { result: RunResult; seconds: number } {
  const loads = loadsOf(aCase, year, {});
  if (!loads.ok) throw new Error("the demo's loads have issues");
  const began = performance.now();
  const steps = simulate(aCase, loads.value);
  let step = steps.next();
  while (step.done !== true) step = steps.next();
  return { result: step.value, seconds: (performance.now() - began) / 1000 };
}

const say = (line: string): void => void process.stdout.write(`${line}\n`);
const rootMeanSquare = (a: Float32Array, b: Float32Array): number =>
  Math.sqrt(a.reduce((sum, one, k) => sum + (one - b[k]!) ** 2, 0) / a.length);
const largest = (a: Float32Array, b: Float32Array): number =>
  a.reduce((most, one, k) => Math.max(most, Math.abs(one - b[k]!)), 0);

/** Slices cut in four and a hundredth of the tolerance: another halving moves nothing by a tenth of what is told here. */
const refinedGrid = 4;
const refinedTolerance = 1e-5;

function tellAccuracy(aCase: Case, result: RunResult): void {
  const { result: exact } = run({
    ...aCase,
    run: { ...aCase.run, gridFineness: refinedGrid, tolerance: refinedTolerance },
  });
  for (const probe of result.probes.filter(({ kind }) => kind === "interface")) {
    const other = exact.probes.find(({ id }) => id === probe.id)!;
    const figures = [
      `T ${rootMeanSquare(probe.T_C, other.T_C).toFixed(3)} K (largest ${largest(probe.T_C, other.T_C).toFixed(2)})`,
      `RH ${(100 * rootMeanSquare(probe.RH, other.RH)).toFixed(3)} points (largest ${(100 * largest(probe.RH, other.RH)).toFixed(2)})`,
    ];
    say(`    ${probe.label}: ${figures.join(", ")}`);
  }
}

say(`${cpus()[0]?.model ?? "unknown processor"}, ${cpus().length} cores, Node ${process.version}`);
const bays = cases.value.filter(({ path }) => path === "bay");
for (const aCase of bays) {
  run(aCase);
  const memoryBefore = process.memoryUsage();
  const { result, seconds } = [run(aCase), run(aCase), run(aCase)].toSorted((a, b) => a.seconds - b.seconds)[0]!;
  const memory = process.memoryUsage();
  const { cells, steps, rejected, iterations } = result.log;
  const megabytes =
    (memory.arrayBuffers + memory.heapUsed - memoryBefore.arrayBuffers - memoryBefore.heapUsed) / 2 ** 20;
  say(`One path-year, ${aCase.option} ${aCase.path}: ${seconds.toFixed(2)} s, ${cells} cells, ${steps} steps`);
  say(
    `    ${((cells * steps) / seconds / 1e6).toFixed(2)} million cells x steps per second, ${rejected} steps rejected, ${iterations} iterations, ${megabytes.toFixed(0)} MB held after three runs`,
  );
  say(
    `    against slices cut in ${refinedGrid} and a tolerance of ${refinedTolerance}, root mean square over the year:`,
  );
  tellAccuracy(aCase, result);
}

const insulated = bays.find(({ layers }) => layers.some(({ id }) => id === "ci"))!;
const thicknesses = howThick({
  case: { ...insulated, run: { ...insulated.run, years: 3 } },
  layer: "ci",
  stock_m: Array.from({ length: 12 }, (_, i) => 0.0127 * (i + 1)),
});
const sweep = thicknesses.members.slice(0, 12).map((member) => run(member.case).seconds);
say(
  `Twelve thicknesses over three years on one core: ${sweep.reduce((sum, one) => sum + one, 0).toFixed(1)} s for ${sweep.length} members`,
);

describe("one year of one path of the demo", () => {
  for (const aCase of bays) {
    bench(`${aCase.option} ${aCase.path}`, () => void run(aCase), {
      iterations: 2,
      warmupIterations: 0,
      time: 0,
      warmupTime: 0,
    });
  }
});
