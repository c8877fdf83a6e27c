import { describe, expect, it } from "vitest";
import {
  answerOf,
  say,
  summarise,
  wetted,
  wettings,
  whichWayItDries,
  type Member,
} from "../../../solver/studies/index.ts";
import { flatResult } from "./fake-result.ts";
import { frameWall } from "./fake-run.ts";

const open = { ...frameWall(0), option: "A" };
const tight = { ...frameWall(0.05), option: "B" };
/** B dries ten times slower than A; the ordinary year stays at 12 %. */
const run = ({ key, case: aCase }: Member) =>
  summarise(
    aCase,
    flatResult(aCase, {
      moisture_percent: (hour) =>
        key.endsWith("ordinary") ? 12 : 12 + 13 * Math.exp(-hour / (aCase.option === "A" ? 480 : 4800)),
    }),
    [],
  );
const question = {
  cases: [open, tight],
  layer: "strand",
  wetting: { moistureContent_percent: 25 },
  date: "10-01",
} as const;

describe("which way does it dry", () => {
  it("follows each option to 20 and 16 % and ranks them", () => {
    const answer = answerOf(whichWayItDries(question), run);
    expect(answer.order).toEqual(["A", "B"]);
    // 12 + 13 exp(-t/tau) = 20 at tau ln(13/8), 16 at tau ln(13/4).
    const days = answer.rows[0]!.times.map((time) => time.first_days!);
    expect(days[0]!).toBeCloseTo((480 * Math.log(13 / 8)) / 24, 0);
    expect(days[1]!).toBeCloseTo((480 * Math.log(13 / 4)) / 24, 0);
    expect(answer.worstClosure).toBeLessThan(1e-3);
    expect(say(answer.rows[0]!.sentence, "ip")).toMatch(
      /At 20 % after 10 days, at 16 % after 24 days\. 67 % of the water .* leaves to the room/,
    );
    expect(say(answer.lead, "ip")).toBe("A is at 20 % after 10 days; B is at 20 % after 97 days.");
  });

  it("says that a wall has no way out when it stays wet", () => {
    const answer = answerOf(whichWayItDries(question), ({ case: aCase }) =>
      summarise(aCase, flatResult(aCase, { moisture_percent: () => 26 }), []),
    );
    expect(say(answer.rows[1]!.sentence, "si")).toMatch(/no way out/);
  });

  it("adds an amount of water to what the layer holds, and sets the date", () => {
    const wet = wetted(open, "strand", { water_kgm2: 0.5 }, "03-15", 1);
    const initial = wet.layers.find((layer) => layer.id === "strand")!.initial;
    // 100 kg/m3 at 80 % and 0.5 kg in 11 mm.
    expect("water_kgm3" in initial && initial.water_kgm3).toBeCloseTo(100 + 0.5 / 0.011, 9);
    expect(wet.run).toMatchObject({ start: "03-15", years: 1 });
    expect(wet.layers.find((layer) => layer.id === "gypsum")!.initial).toEqual({ relativeHumidity: 0.8 });
  });

  it("refuses a wetting that means nothing", () => {
    expect(() => wetted(open, "wrap", { water_kgm2: 1 }, "10-01", 1)).toThrow(/layer with a thickness/);
    expect(() => wetted(open, "nowhere", { water_kgm2: 1 }, "10-01", 1)).toThrow(/layers are siding, space/);
    expect(() => whichWayItDries({ ...question, date: "autumn" })).toThrow(/monthAndDay/);
  });

  it("offers wettings that say what they stand for", () => {
    for (const each of wettings) expect(each.source).toMatch(/./);
  });
});
