import { describe, expect, it } from "vitest";
import {
  codeRowOf,
  holdsAll,
  howThick,
  humidityAtDewPoint,
  planeResistances,
  say,
  sumOver,
  type MemberSummary,
} from "../../solver/index.ts";
import { caseOfWall, runWall } from "./run.ts";
import type { Retarder } from "./walls.ts";

describe("room air leaking to the sheathing, zone 6A, Class II inside", () => {
  const wall = (leak: number, R: number, retarder: Retarder = "classII"): MemberSummary =>
    runWall({ zone: "6A", retarder, leak, ...(R > 0 ? { ci: { board: "xps", R } } : {}) });
  const winter = [11, 0, 1];

  it("at 0.2 m³/(h m²) the leak brings more water than diffusion through Class III paint", () => {
    // Common practice, no source: air carries far more water than diffusion.
    const leaky = wall(0.2, 0).sheathingBudget!;
    const painted = wall(0, 0, "paint10").sheathingBudget!;
    const brought = sumOver(leaky, leaky.byCause["air leak"]!, winter);
    const diffused = -sumOver(painted, painted.inward, winter);
    expect(diffused).toBeGreaterThan(0);
    expect(brought).toBeGreaterThan(diffused);
  });

  it("the board outside takes most of the harm out of the leak", () => {
    const harm = (R: number): number => wall(0.2, R).peakMoisture_percent! - wall(0, R).peakMoisture_percent!;
    expect(harm(11.25)).toBeLessThan(harm(0) / 2);
  });

  it("too thin a board and a leak: the wood is wetter in summer than with no board at all", () => {
    // Field opinion, second-hand: thin foam over a humid, leaky wall was the worst of those studied.
    expect(wall(0.6, 5).leastMoisture_percent!).toBeGreaterThan(wall(0.6, 0).leastMoisture_percent!);
  });

  it("changing the retarder does not cure the leak: with paint, Class II and plastic sheet alike the wood passes 20 %, and the sheet slows its recovery", () => {
    // A hand model whose wood cannot hold more than fibre saturation gives one peak of 33 % for all three. Here the wood goes on
    // taking up water: 38 % with paint, whose own diffusion adds to the leak's, 26 % with the sheet. Neither is a cure.
    const walls = (["paint10", "classII", "poly"] as const).map((retarder) => wall(0.2, 0, retarder));
    for (const summary of walls) {
      expect(summary.peakMoisture_percent!).toBeGreaterThan(20);
      expect(holdsAll(summary)).toBe(false);
    }
    expect(walls[2]!.leastMoisture_percent!).toBeGreaterThanOrEqual(walls[0]!.leastMoisture_percent!);
  });
});

describe("a humidified house behind the code's foam, zone 6A, R-11.25", () => {
  it("the wood gets wetter with every step of room humidity", () => {
    const peaks = [0.2, 0.35, 0.45, 0.5].map(
      (humidity) => runWall({ zone: "6A", humidity, ci: { board: "xps", R: 11.25 } }).peakMoisture_percent!,
    );
    for (let step = 1; step < peaks.length; step += 1) expect(peaks[step]!).toBeGreaterThan(peaks[step - 1]!);
  });

  // Steady humidity at which the face of the sheathing meets the dew point, room at 21 °C; series resistances worked by hand with
  // the cladding and its air space counted (COMPUTED, whole percent). The engine's rule drops what stands in moving outdoor air.
  const boards = [0, 5, 7.5, 11.25, 15, 20] as const;
  it.each([
    [-1.3, [25, 32, 36, 40, 44, 49]],
    [-6.5, [17, 24, 28, 32, 36, 41]],
    [-12, [12, 18, 21, 25, 29, 34]],
  ])(
    "at %d °C outside the humidity that the wall stands by hand rises with the board and stays within 3 points of the steady figures",
    (outdoor_C, expected) => {
      const stands = boards.map(
        (R) =>
          100 *
          humidityAtDewPoint(
            outdoor_C,
            21,
            planeResistances(caseOfWall({ zone: "6A", ...(R > 0 ? { ci: { board: "xps" as const, R } } : {}) })),
          ),
      );
      for (let step = 1; step < boards.length; step += 1) expect(stands[step]!).toBeGreaterThan(stands[step - 1]!);
      stands.forEach((value, step) => expect(Math.abs(value - expected[step]!)).toBeLessThan(3));
    },
  );

  it.each([0.45, 0.5])("at %d the wall is told to be outside the assumption of the table", (roomHumidity) => {
    const base = caseOfWall({ zone: "6A", humidity: roomHumidity, ci: { board: "xps", R: 11.25 } });
    const beside = howThick({
      case: base,
      layer: "ci",
      codeRow: codeRowOf("IRC 2021", "6A", "2x6"),
      winter: { outdoor_C: -6.5, room_C: 21, roomHumidity },
    }).reduce(new Map()).beside;
    expect(beside.why.map((reason) => say(reason, "ip")).join(" ")).toMatch(/outside the assumption of the table/);
  });
});
