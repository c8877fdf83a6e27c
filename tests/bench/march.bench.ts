import { bench, describe } from "vitest";
import { casesOf, demoProject, loadsOf, simulate, weatherOf } from "../../solver/index.ts";

const cases = casesOf({ ...demoProject, run: { ...demoProject.run, years: 1 } });
if (!cases.ok) throw new Error("the demo has issues");
const weather = weatherOf(demoProject.site!.weather, {});
if (!weather.ok) throw new Error("the demo's weather has issues");

describe("one year of one path of the demo", () => {
  for (const aCase of cases.value.filter(({ path }) => path === "bay")) {
    const loads = loadsOf(aCase, weather.value, {});
    if (!loads.ok) throw new Error("the demo's loads have issues");
    const once = (): void => {
      const steps = simulate(aCase, loads.value);
      while (steps.next().done !== true);
    };
    bench(`${aCase.option} ${aCase.path}`, once, { iterations: 2, warmupIterations: 0, time: 0, warmupTime: 0 });
  }
});
