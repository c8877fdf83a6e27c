import { beforeAll, describe, expect, it } from "vitest";
import {
  answerOf,
  codeRowOf,
  coldestSeason,
  howThick,
  metrePerInch,
  monthlyAir,
  rsiPerR,
  say,
  type HowThickAnswer,
  type Material,
} from "../../solver/index.ts";
import { caseOfWall, loadsFor, runCase } from "./run.ts";
import { type Zone } from "./walls.ts";

/**
 * Extruded foam outside of a 2x6 wall with R-20, 10 perm paint and a room at 35 %, in five zones: none, half, the code's least
 * thickness for Class III, and half as much again. North, vented siding, second year judged, neither leak nor rain.
 *
 * Least R over 2x6: IRC 2021 Table R702.7(3) (SEEN); for zone 8 the 2018 row that served 7 and 8 alike, R-15 (SEEN).
 * Order and sign: common practice, no source. Bands in brackets come from a hand model without liquid flow, latent heat or real
 * surfaces and are not limits; where the engine gives another figure the reason stands beside the check.
 */
const zones = [
  { zone: "4C", edition: "IRC 2021", R: 3.75 },
  { zone: "5A", edition: "IRC 2021", R: 7.5 },
  { zone: "6A", edition: "IRC 2021", R: 11.25 },
  { zone: "7", edition: "IRC 2021", R: 15 },
  { zone: "8", edition: "IRC 2018", R: 15 },
] as const satisfies readonly { zone: Zone; edition: string; R: number }[];

const answers = new Map<Zone, HowThickAnswer>();
const conductivity = (material: Material): number =>
  typeof material.conductivity_WmK === "object" ? material.conductivity_WmK.dry_WmK : material.conductivity_WmK!;

function ask({ zone, edition, R }: (typeof zones)[number]): HowThickAnswer {
  const base = caseOfWall({ zone, ci: { board: "xps", R } });
  const thickness = (share: number): number =>
    share * R * rsiPerR * conductivity(base.layers.find((layer) => layer.id === "ci")!.material);
  const air = monthlyAir(loadsFor(base));
  const season = coldestSeason(air.outdoor_C);
  const winter = { outdoor_C: season.mean, room_C: 21, roomHumidity: 0.35 };
  // Half, whole and half as much again stand in for stock boards, so that the same runs serve the search and the checks.
  return answerOf(
    howThick({
      case: base,
      layer: "ci",
      stock_m: [0.5, 1, 1.5].map(thickness),
      max_m: 0.2,
      codeRow: codeRowOf(edition, zone, "2x6"),
      winter,
    }),
    (member) => runCase(member.case).summary,
  );
}

const steps = (zone: Zone) => {
  const points = answers.get(zone)!.points;
  return [points[0]!, ...points.filter((point) => point.stock)].map((point) => point.summary);
};

describe("foam outside of a 2x6 wall, zone by zone", () => {
  beforeAll(() => {
    for (const each of zones) answers.set(each.zone, ask(each));
  }, 900_000);

  it.each(zones)("zone $zone: every step of foam warms the sheathing's inner face in the coldest month", ({ zone }) => {
    const faces = steps(zone).map((summary) => summary.coldestMonth.temperature_C);
    expect(faces).toHaveLength(4);
    for (let step = 1; step < 4; step += 1) expect(faces[step]!).toBeGreaterThan(faces[step - 1]!);
  });

  it.each(zones.filter(({ zone }) => zone !== "8"))(
    "zone $zone: every step of foam lowers the wood's peak and the dampest month",
    ({ zone }) => {
      const summaries = steps(zone);
      for (let step = 1; step < 4; step += 1) {
        expect(summaries[step]!.peakMoisture_percent!).toBeLessThan(summaries[step - 1]!.peakMoisture_percent!);
        expect(summaries[step]!.thirtyDayHumidity).toBeLessThanOrEqual(summaries[step - 1]!.thirtyDayHumidity);
      }
    },
  );

  it("zone 6A: above 20 % without foam, below 16 % at the code's R-11.25", () => {
    const [none, , code] = steps("6A");
    expect(none!.peakMoisture_percent!).toBeGreaterThan(20);
    expect(code!.peakMoisture_percent!).toBeLessThan(16);
  });

  it("zones 4C and 5A at the code's thickness: wood below 16 %, the dampest month below 90 %", () => {
    // Said of such walls: about 85 % [hand model 77 and 82 %]. The engine gives 87 % in both: it reads the very face of the board,
    // where the room's vapour arrives, and a strand board a quarter tighter when dry than the hand model's lets less through.
    for (const zone of ["4C", "5A"] as const) {
      expect(steps(zone)[2]!.peakMoisture_percent!).toBeLessThan(16);
      expect(steps(zone)[2]!.thirtyDayHumidity).toBeLessThan(0.9);
    }
  });

  it("zone 7 at R-15: the wood stays below 17 %", () => {
    expect(steps("7")[2]!.peakMoisture_percent!).toBeLessThan(17);
  });

  it("zone 8 at the row that serves 7 and 8 alike: still too wet at 35 % indoors, and the answer says that the row presumes drier air", () => {
    const answer = answers.get("8")!;
    expect(steps("8")[2]!.peakMoisture_percent!).toBeGreaterThan(20);
    expect(answer.beside.code!.presumesHumidity!).toBeLessThan(0.3);
    expect(answer.beside.why.map((reason) => say(reason, "ip")).join(" ")).toMatch(
      /outside the assumption of the table/,
    );
    expect(answer.needed_m === null || answer.needed_m > answer.beside.code!.thickness_m).toBe(true);
  });

  it("zone 8: half the table's thickness does worse than none, and the answer says so", () => {
    // Said of the peak [hand model 30 % against 27 %]. There the store was capped at fibre saturation; here bare board goes on gathering
    // frost to 45 % and half a board to 35 %, but keeps it: the driest day is 11 % against 8 %, and the warm wet weeks of spring count
    // more growth than without any foam. So the measure that turns is the mould index, not the peak.
    const worse = answers.get("8")!.worseThanNone!;
    expect(worse.measure).toBe("mouldIndex");
    const half = steps("8")[1]!;
    expect(half.mouldIndex!).toBeGreaterThan(steps("8")[0]!.mouldIndex!);
    expect(half.leastMoisture_percent!).toBeGreaterThan(steps("8")[0]!.leastMoisture_percent!);
  });

  it("the foam that the run asks for rises with the cold, and the table's row stands beside it with the reason", () => {
    const needed = zones.map(({ zone }) => answers.get(zone)!.needed_m ?? Infinity);
    for (let step = 1; step < needed.length; step += 1) expect(needed[step]!).toBeGreaterThanOrEqual(needed[step - 1]!);
    const inches = (value: number | null | undefined): string =>
      value == null ? "none found" : (value / metrePerInch).toFixed(2);
    const table = zones.map(({ zone, edition }) => {
      const answer = answers.get(zone)!;
      const code = answer.beside.code!;
      return {
        zone,
        "run, in.": inches(answer.needed_m),
        "run, R": answer.needed_m === null ? "" : (answer.needed_m / rsiPerR / 0.0288).toFixed(1),
        "decided by": answer.governing ?? "",
        "every finding, in.": inches(answer.everyFinding.needed_m),
        "asked by": answer.everyFinding.governing ?? answer.everyFinding.outOfReach.join(" "),
        [`${"code"}, in.`]: inches(code.thickness_m),
        row: `${edition} R-${(code.row.least_m2KW / rsiPerR).toFixed(2)}`,
        "row presumes": `${Math.round(code.presumesHumidity! * 100)} % RH`,
        "hand, in.": inches(answer.beside.ratioRule!.thickness_m),
        "winter, °C": answer.beside.ratioRule!.winter.outdoor_C.toFixed(1),
      };
    });
    console.table(table);
    for (const { zone } of zones)
      console.log(
        `${zone}: ${say(answers.get(zone)!.lead, "ip")} ${answers
          .get(zone)!
          .beside.why.map((reason) => say(reason, "ip"))
          .join(" ")}`,
      );
    for (const { zone } of zones) expect(answers.get(zone)!.beside.why.length).toBeGreaterThan(1);
  });
});
