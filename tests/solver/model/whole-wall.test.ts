import { expect, test } from "vitest";
import {
  filmSets,
  framingShares,
  areaShares,
  projectSchema,
  wholeWall,
  type Layer,
  type Option,
  type Path,
} from "../../../solver/model/index.ts";
import { fastenerCorrection_Wm2K } from "../../../solver/model/thermal/fasteners.ts";
import { rsiPerR } from "../../../solver/units.ts";
import { csvRows } from "./csv-rows.ts";

const iso = Object.fromEntries(csvRows("iso6946_examples.csv").map((row) => [row["case"]!, row]));
const frames = Object.fromEntries(
  csvRows("na_frame_wall_examples.csv").map((row) => [row["case"]!.split(" ")[0]!, row]),
);

let serial = 0;
const board = (thickness_m: number, conductivity_WmK: number): Layer => ({
  id: `layer${++serial}`,
  thickness_m,
  material: {
    id: `board${serial}`,
    name: "Board",
    kind: "bulk",
    density_kgm3: 500,
    heatCapacity_JkgK: 1000,
    conductivity_WmK,
    vapour: { resistanceFactor: 10 },
    sorption: { slope_kgm3: 1 },
  },
});
/** A layer of a given resistance; the thickness is any. */
const ofR = (resistance: number, thickness_m = 0.01): Layer => board(thickness_m, thickness_m / resistance);
const path = (kind: Path["kind"], areaShare: number, layers: Layer[]): Path => ({ id: kind, kind, areaShare, layers });
const option = (...paths: Path[]): Option => ({ id: "A", name: "wall", paths });

test("S1: gypsum, 15 % studs, strand board give both limits, their mean and its error to the printed digits (ISO 6946 combined method, COMPUTED)", () => {
  const shared = (): [Layer, Layer] => [board(0.011, 0.13), board(0.0125, 0.25)];
  const bay = shared();
  const stud = shared();
  const result = wholeWall(
    option(
      path("studBay", 0.85, [bay[0], board(0.14, 0.038), bay[1]]),
      path("stud", 0.15, [stud[0], board(0.14, 0.13), stud[1]]),
    ),
    {},
    { films: filmSets.iso6946 },
  );
  const row = iso["6946-S1"]!;
  expect(result.iso6946!.upper_m2KW).toBeCloseTo(Number(row["R_upper"]), 5);
  expect(result.iso6946!.lower_m2KW).toBeCloseTo(Number(row["R_lower"]), 5);
  expect(result.iso6946!.R_m2KW).toBeCloseTo(Number(row["R_T"]), 5);
  expect(result.iso6946!.U_Wm2K).toBeCloseTo(Number(row["U_W_m2K"]), 5);
  expect(100 * result.iso6946!.greatestError).toBeCloseTo(Number(row["max_rel_error_pct"]), 3);
});

test("S2: the same frame with 23 % studs behind 2 in. of exterior foam agrees to the printed digits (COMPUTED)", () => {
  const wall = (middle: Layer): Layer[] => [board(0.0508, 0.029), board(0.011, 0.13), middle, board(0.0127, 0.16)];
  const result = wholeWall(
    option(path("studBay", 0.77, wall(board(0.14, 0.04))), path("stud", 0.23, wall(board(0.14, 0.12)))),
    {},
    { films: filmSets.iso6946 },
  );
  const row = iso["6946-S2"]!;
  expect(result.iso6946!.upper_m2KW).toBeCloseTo(Number(row["R_upper"]), 5);
  expect(result.iso6946!.lower_m2KW).toBeCloseTo(Number(row["R_lower"]), 5);
  expect(result.iso6946!.U_Wm2K).toBeCloseTo(Number(row["U_W_m2K"]), 5);
  expect(100 * result.iso6946!.greatestError).toBeCloseTo(Number(row["max_rel_error_pct"]), 3);
});

test("S3: a masonry wall in series has equal limits and no error (COMPUTED)", () => {
  const result = wholeWall(
    option(path("solid", 1, [board(0.102, 0.77), board(0.1, 0.035), board(0.215, 0.56), board(0.013, 0.57)])),
    {},
    { films: filmSets.iso6946 },
  );
  expect(result.iso6946!.R_m2KW).toBeCloseTo(3.56635, 5);
  expect(result.iso6946!.U_Wm2K).toBeCloseTo(0.2804, 5);
  expect(result.iso6946!.greatestError).toBeCloseTo(0, 9);
});

test("P1: the published government example (Scotland 2005, timber frame) has path totals 3.971 and 1.715 as printed, and the mean that follows", () => {
  const wall = (middle: number): Layer[] => [
    ofR(0.132, 0.102),
    ofR(0.09, 0.05),
    ofR(0.146, 0.0127),
    ofR(middle, 0.14),
    ofR(0.1, 0.0125),
  ];
  const result = wholeWall(
    option(path("studBay", 0.905, wall(3.333)), path("stud", 0.095, wall(1.077))),
    {},
    { films: filmSets.iso6946 },
  );
  expect(result.paths[0]!.R_m2KW).toBeCloseTo(3.971, 3);
  expect(result.paths[1]!.R_m2KW).toBeCloseTo(1.715, 3);
  const row = iso["6946-P1 published paths"]!;
  expect(result.iso6946!.upper_m2KW).toBeCloseTo(Number(row["R_upper"]), 5);
  expect(result.iso6946!.lower_m2KW).toBeCloseTo(Number(row["R_lower"]), 5);
  expect(result.iso6946!.U_Wm2K).toBeCloseTo(Number(row["U_W_m2K"]), 5);
});

test("NA-S1 and S2: isothermal planes of a brick-clad 2x6 wall give 4.11 and, with advanced framing, 4.23 m2 K/W (published worked page, SEEN)", () => {
  const wall = (middle: number): Layer[] => [
    ofR(0.07, 0.09),
    ofR(0.18, 0.025),
    ofR(0.97, 0.0254),
    ofR(0.11, 0.011),
    ofR(middle, 0.14),
    ofR(0.08, 0.0127),
  ];
  const framed = (share: number): Option =>
    option(path("studBay", 1 - share, wall(3.87)), path("stud", share, wall(140 * 0.0085)));
  const films = { inside_m2KW: 0.12, outside_m2KW: 0.03 };
  expect(wholeWall(framed(0.23), {}, { films }).isothermalPlanes!.R_m2KW).toBeCloseTo(
    Number(frames["NA-S1"]!["assembly R"]),
    4,
  );
  expect(wholeWall(framed(0.2), {}, { films }).isothermalPlanes!.R_m2KW).toBeCloseTo(
    Number(frames["NA-S2"]!["assembly R"]),
    4,
  );
});

test("NA-S3 to S5: parallel paths in inch-pound units give R 18.5920, 22.4335, 13.4590 and 12.8769 (layer values SEEN or MEMORY as noted in the table)", () => {
  const inIP = (values: number[]): Layer[] => values.map((value) => ofR(value * rsiPerR));
  const films = { inside_m2KW: 0.68 * rsiPerR, outside_m2KW: 0.17 * rsiPerR };
  const R = (share: number, bay: number[], stud: number[]): number =>
    wholeWall(option(path("studBay", 1 - share, inIP(bay)), path("stud", share, inIP(stud))), {}, { films })
      .parallelPath.R_m2KW / rsiPerR;
  expect(R(0.25, [0.62, 0.62, 25, 0.45], [0.62, 0.62, 6.875, 0.45])).toBeCloseTo(18.592, 4);
  expect(R(0.25, [0.62, 5, 0.62, 20, 0.45], [0.62, 5, 0.62, 6.875, 0.45])).toBeCloseTo(22.4335, 4);
  expect(R(0.2, [0.81, 1.32, 13, 0.45], [0.81, 1.32, 4.38, 0.45])).toBeCloseTo(13.459, 4);
  expect(R(0.25, [0.81, 1.32, 13, 0.45], [0.81, 1.32, 4.38, 0.45])).toBeCloseTo(12.8769, 4);
});

test("screws of 4.8 mm on a 16 by 24 in. grid through R-11.25 cost 0.0074 W/(m2 K) in a wall of 5.2 m2 K/W (ISO 6946 annex, form MEMORY, COMPUTED)", () => {
  const perM2 = 1 / (0.4064 * 0.6096);
  expect(
    fastenerCorrection_Wm2K({ perM2, diameter_m: 0.0048, conductivity_WmK: 50 }, 0.05715, 11.25 * rsiPerR, 5.2),
  ).toBeCloseTo(0.0074, 4);
});

test("the lower limit never exceeds the upper, and heat shares add up to one, for any split of framing", () => {
  for (const share of [0, 0.1, 0.25, 0.6, 1]) {
    const wall = (middle: Layer): Layer[] => [board(0.02, 0.1), middle, board(0.0127, 0.16)];
    const result = wholeWall(
      option(path("studBay", 1 - share, wall(board(0.14, 0.04))), path("stud", share, wall(board(0.14, 0.12)))),
      {},
    );
    expect(result.iso6946!.lower_m2KW).toBeLessThanOrEqual(result.iso6946!.upper_m2KW + 1e-12);
    expect(result.paths.reduce((sum, one) => sum + one.heatShare, 0)).toBeCloseTo(1, 12);
  }
});

test("paths that end in different planes are not averaged by planes, and the wall says so", () => {
  const result = wholeWall(
    option(path("studBay", 0.9, [board(0.05, 0.03), board(0.14, 0.04)]), path("ledger", 0.1, [board(0.14, 0.12)])),
    {},
  );
  expect(result.isothermalPlanes).toBeNull();
  expect(result.iso6946).toBeNull();
  expect(result.notes.join(" ")).toContain("same plane");
});

test("area shares that are left out follow the framing default by spacing, 25 % at 16 in. and 22 % at 24 in. (US tables)", () => {
  const bare = option(
    { ...path("studBay", 0, [board(0.1, 1)]), areaShare: undefined },
    { ...path("stud", 0, [board(0.1, 1)]), areaShare: undefined },
  );
  expect(areaShares(bare).map((one) => one.share)).toEqual([0.75, 0.25]);
  expect(areaShares(bare, "us24").map((one) => one.share)).toEqual([0.78, 0.22]);
  expect(framingShares.map((one) => one.share)).toEqual([0.25, 0.22, 0.23, 0.2]);
});

test("a wall of the schema's own making is accepted by it", () => {
  expect(projectSchema.shape.options.safeParse([option(path("solid", 1, [board(0.1, 1)]))]).success).toBe(true);
});
