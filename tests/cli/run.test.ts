import { readFile, readdir } from "node:fs/promises";
import { existsSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { root } from "../../electron/tools/targets.mjs";
import { newFolder, wall, type Ended } from "./wall.ts";

interface Range {
  readonly min: number;
  readonly mean: number;
  readonly max: number;
}
interface Document {
  readonly format: string;
  readonly project: string;
  readonly weather: { readonly name: string; readonly kind: string; readonly sha256: string };
  readonly runs: readonly {
    readonly option: string;
    readonly path: string;
    readonly status: string;
    readonly judged: { readonly from_h: number; readonly hours: number };
    readonly probes: readonly {
      readonly id: string;
      readonly layer: string;
      readonly kind: string;
      readonly T_C: Range;
      readonly RH: Range;
      readonly MC_percent: Range | null;
      readonly monthly: { readonly T_C: readonly number[]; readonly RH: readonly number[] };
    }[];
    readonly findings: readonly { readonly statement: string; readonly source: string }[];
    readonly books: { readonly water: { readonly closure: number }; readonly heat: { readonly closure: number } };
    readonly log: { readonly cells: number; readonly steps: number; readonly seconds: number };
  }[];
  readonly wall: Readonly<Record<string, { readonly U_Wm2K: number; readonly R_m2KW: number }>>;
  readonly cautions: readonly string[];
}

const burlington = join(root, "..", "shared", "climate", "USA_VT_Burlington.Intl.AP.726170_TMY3.epw");
/** One year each: what is asked for here does not need the second. */
const weathers: [string, string[], string[]][] = [
  ["the built-in weather", ["--years", "1", "--path", "bay"], ["A-bay.csv", "B-bay.csv"]],
  // Measured weather is not part of the repository; where it must be there, its absence fails.
  ...(existsSync(burlington) || process.env["CI"] !== undefined
    ? [
        [
          "a measured weather file",
          ["--years", "1", "--weather", burlington],
          ["A-bay.csv", "A-stud.csv", "B-bay.csv", "B-stud.csv"],
        ] as [string, string[], string[]],
      ]
    : []),
];

describe.each(weathers)("run on the demo with %s", (_title, words, files) => {
  let ended: Ended;
  let document: Document;
  let out: string;
  beforeAll(async () => {
    out = await newFolder();
    ended = await wall(["run", "demo", "--json", "--out", out, ...words]);
    document = JSON.parse(ended.out) as Document;
  }, 120_000);
  const bay = (option: string): Document["runs"][0] =>
    document.runs.find((run) => run.option === option && run.path === "bay")!;
  const innerFace = (option: string): Document["runs"][0]["probes"][0] =>
    bay(option).probes.find((probe) => probe.layer === "sheathing" && /inside/.test(probe.id))!;

  test("ends with 0 and one document of two options", () => {
    expect(ended.code).toBe(0);
    expect(document.format).toBe("wallyear-result");
    expect([...new Set(document.runs.map((run) => run.option))]).toEqual(["A", "B"]);
    expect(document.runs.every((run) => run.status === "finished")).toBe(true);
    expect(document.weather.sha256).toMatch(/^[0-9a-f]{64}$/);
    expect(document.cautions.join(" ")).toMatch(/licensed designer/);
  });

  test("keeps its progress on standard error", () => {
    expect(ended.err).toMatch(/\d+ %/);
    expect(ended.err).toContain("100 %");
  });

  test("closes the books of water and heat", () => {
    for (const run of document.runs) {
      expect(run.books.water.closure).toBeLessThan(1e-6);
      expect(run.books.heat.closure).toBeLessThan(1e-6);
    }
  });

  test("finds the sheathing's inner face warmer in every winter month and drier at its peak with exterior insulation", () => {
    for (const month of [11, 0, 1, 2])
      expect(innerFace("B").monthly.T_C[month]!).toBeGreaterThan(innerFace("A").monthly.T_C[month]!);
    expect(innerFace("B").RH.max).toBeLessThan(innerFace("A").RH.max);
  });

  test("gives the better insulated option the smaller U", () => {
    expect(document.wall["B"]!.U_Wm2K).toBeLessThan(document.wall["A"]!.U_Wm2K);
    expect(document.wall["A"]!.R_m2KW).toBeCloseTo(1 / document.wall["A"]!.U_Wm2K, 9);
  });

  test("names a source under every finding", () => {
    expect(bay("A").findings.length).toBeGreaterThan(0);
    for (const finding of document.runs.flatMap((run) => run.findings)) {
      expect(finding.statement).toMatch(/\w+/);
      expect(finding.source).toMatch(/\w+/);
    }
  });

  test("writes hourly CSV whose rows give the ranges of the document", async () => {
    expect((await readdir(out)).sort()).toEqual(files);
    const [names, units, ...rows] = (await readFile(join(out, "A-bay.csv"), "utf8")).trimEnd().split("\n");
    const columns = names!.split(",");
    expect(columns[0]).toBe("time_h");
    expect(units!.split(",")).toHaveLength(columns.length);
    expect(units!.split(",").slice(0, 4)).toEqual(["h", "degC", "1", "kg/m3"]);
    const { from_h, hours } = bay("A").judged;
    expect(rows).toHaveLength(from_h + hours);
    const face = innerFace("A");
    const column = columns.indexOf(`${face.id}.T`);
    const judged = rows.slice(from_h).map((row) => Number(row.split(",")[column]));
    expect(Math.min(...judged)).toBeCloseTo(face.T_C.min, 4);
    expect(Math.max(...judged)).toBeCloseTo(face.T_C.max, 4);
    expect(rows.map((row) => Number(row.split(",", 1)[0])).every((time, index) => time === index + 1)).toBe(true);
  });
});

test("the same run twice gives the same document but for its seconds", async () => {
  const words = ["run", "demo", "--option", "A", "--path", "bay", "--years", "1", "--json"];
  const [first, second] = await Promise.all([wall(words), wall(words)]);
  const plain = (text: string): string => text.replace(/"seconds": [\d.e-]+/g, "");
  expect(plain(first.out)).toBe(plain(second.out));
});

test("side-by-side gives the differences of the probes that both options have", async () => {
  const { code, out } = await wall(["side-by-side", "demo", "A", "B", "--path", "bay", "--years", "1", "--json"]);
  expect(code).toBe(0);
  const document = JSON.parse(out) as Document & {
    differences: { path: string; probes: { id: string; T_C: Range }[] }[];
  };
  const inner = (option: string): Range =>
    document.runs.find((run) => run.option === option)!.probes.find((probe) => probe.id === "sheathing-inside")!.T_C;
  const difference = document.differences[0]!.probes.find((probe) => probe.id === "sheathing-inside")!;
  expect(difference.T_C.mean).toBeCloseTo(inner("B").mean - inner("A").mean, 9);
});

test("for people, run tells findings, how the books close and the cautions", async () => {
  const { code, out } = await wall(["run", "demo", "--option", "B", "--path", "bay", "--years", "1"]);
  expect(code).toBe(0);
  expect(out).toMatch(/Larch Hollow house/);
  expect(out).toMatch(/Books close/);
  expect(out).toMatch(/licensed designer/);
});

test("materials finds by the words of the trade, and shows sources in JSON", async () => {
  const listed = await wall(["materials", "osb"]);
  expect(listed.code).toBe(0);
  expect(listed.out).toMatch(/^osb_111 /m);
  const document = JSON.parse((await wall(["materials", "osb", "--json"])).out) as { materials: object[] };
  expect(document.materials.length).toBeGreaterThan(0);
});
