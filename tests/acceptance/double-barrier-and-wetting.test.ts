import { describe, expect, it } from "vitest";
import {
  answerOf,
  holdsAll,
  rsiPerR,
  say,
  whichWayItDries,
  wetted,
  type DryingAnswer,
  type MemberSummary,
} from "../../solver/index.ts";
import { casesFrom, caseOfWall, loadsFor, runCase, runWall } from "./run.ts";
import {
  board,
  cladding,
  lining,
  projectOf,
  sheathing,
  wrb,
  type Board,
  type Retarder,
  cavity,
  sheet,
} from "./walls.ts";

const summaryOf = (aCase: Parameters<typeof runCase>[0]): MemberSummary => runCase(aCase).summary;

describe("sheathing closed in at 25 %, zone 6A, 1 October, R-11.25 outside", () => {
  const boards = ["stone_wool_board", "xps", "pir_foil"] as const satisfies readonly Board[];
  const insides = ["paint10", "classII", "poly"] as const satisfies readonly Retarder[];
  const days = new Map<string, number>();
  const daysTo = (outside: Board | "none", inside: Retarder, threshold: 20 | 16): number => {
    const key = `${outside}/${inside}/${threshold}`;
    if (!days.has(key)) {
      const summary = runWall({
        zone: "6A",
        retarder: inside,
        startMoisture_percent: 25,
        years: 1,
        ...(outside === "none" ? {} : { ci: { board: outside, R: 11.25 } }),
      });
      for (const time of summary.dryingTimes.filter((each) => each.layer === "sheathing"))
        days.set(`${outside}/${inside}/${time.threshold_percent}`, time.first_days ?? Infinity);
    }
    return days.get(key)!;
  };

  it.each(insides)("with %s inside: wool dries first, then extruded foam, then foil", (inside) => {
    // Common practice, no source: the board outside decides how much leaves outward.
    const [wool, foam, foil] = boards.map((outside) => daysTo(outside, inside, 20));
    expect(wool!).toBeLessThan(foam!);
    expect(foam! < foil! || (foam === Infinity && foil === Infinity)).toBe(true);
    const [wool16, foam16, foil16] = boards.map((outside) => daysTo(outside, inside, 16));
    expect(wool16!).toBeLessThan(foam16!);
    expect(foam16! < foil16! || foil16 === Infinity).toBe(true);
  });

  it.each(boards)(
    "behind %s: paint lets it dry sooner than Class II, Class II sooner than a plastic sheet",
    (outside) => {
      const times = insides.map((inside) => daysTo(outside, inside, 16));
      const sums = insides.map((inside) => daysTo(outside, inside, 20));
      for (let step = 1; step < insides.length; step += 1) {
        expect(sums[step]! > sums[step - 1]! || sums[step] === Infinity).toBe(true);
        expect(times[step]! > times[step - 1]! || times[step] === Infinity).toBe(true);
      }
    },
  );

  it("foil outside and plastic inside: not at 20 % within twelve months", () => {
    expect(daysTo("pir_foil", "poly", 20)).toBe(Infinity);
  });

  it("without a board outside the first drop to 20 % takes weeks", () => {
    expect(daysTo("none", "paint10", 20)).toBeGreaterThan(5);
    expect(daysTo("none", "paint10", 20)).toBeLessThan(90);
  });

  it("the drying study says the same, names the way out that is missing, and its budgets close", () => {
    const cases = [
      caseOfWall({ zone: "6A", ci: { board: "stone_wool_board", R: 11.25 }, years: 1 }),
      { ...caseOfWall({ zone: "6A", retarder: "poly", ci: { board: "pir_foil", R: 11.25 }, years: 1 }), option: "B" },
    ];
    const answer: DryingAnswer = answerOf(
      whichWayItDries({ cases, layer: "sheathing", wetting: { moistureContent_percent: 25 }, date: "10-01" }),
      (member) => summaryOf(member.case),
    );
    expect(answer.order[0]).toBe("A");
    expect(say(answer.rows[1]!.sentence, "ip")).toMatch(/it has no way out/);
    // Asked of every budget that is shown: inward, outward, stored and sources add up to 0.1 %.
    expect(answer.worstClosure).toBeLessThan(1e-3);
    for (const row of answer.rows)
      for (const budget of [row.sheathing, row.wall, row.ordinarySheathing, row.ordinaryWall])
        expect(budget).not.toBeNull();
  });
});

describe("two vapour barriers, zone 6A and 5A", () => {
  it("in an ordinary year without leaks a thin foam board and a plastic sheet keep the wood dry", () => {
    // Common practice, no source: many such walls stand in cold places and are reported to work.
    const summary = runWall({ zone: "6A", retarder: "poly", ci: { board: "xps", R: 5 } });
    expect(summary.peakMoisture_percent!).toBeLessThan(16);
    expect(holdsAll(summary)).toBe(true);
  });

  it("a litre of rain a year that gets in stays in: above 20 % for most of the year behind foil and plastic, and what is told is the missing way out", () => {
    const spec = { zone: "5A", retarder: "poly", ci: { board: "pir_foil", R: 7.5 } } as const;
    const plain = caseOfWall(spec);
    const loads = loadsFor(plain);
    let rain_kgm2 = 0;
    for (let k = 0; k < loads.time_s.length - 1; k += 1)
      rain_kgm2 += loads.outside.rain_kgm2s.start[k]! * (loads.time_s[k + 1]! - loads.time_s[k]!);
    const project = projectOf(spec);
    const leaky = casesFrom({
      ...project,
      site: { ...project.site!, rain: { leakShare: Math.min(1, 1 / rain_kgm2), leakTo: "sheathing" } },
    })[0]!;
    const wet = runCase(leaky).summary;
    const dry = runCase(plain).summary;
    expect(wet.peakMoisture_percent!).toBeGreaterThan(20);
    expect(wet.peakMoisture_percent!).toBeGreaterThan(dry.peakMoisture_percent! + 5);
    expect(wet.woodMoisture_percent.filter((mean) => mean > 20).length).toBeGreaterThan(6);
    expect(holdsAll(wet)).toBe(false);
  });
});

describe("mineral wool against foam outside at equal R, zone 6A", () => {
  const boards = ["stone_wool_board", "eps_ii", "xps"] as const satisfies readonly Board[];
  /** Extruded foam between foil facers: the R of extruded foam in the cold too, and next to no vapour. */
  function foilFaced(R: number): MemberSummary {
    const layers = [
      ...cladding,
      wrb,
      { id: "facer", material: sheet("foil_facer", "Foil facer, 0.03 perm", 0.03) },
      ...board("xps", R),
      sheathing,
      cavity("2x6"),
      ...lining("paint10"),
    ];
    return runCase(casesFrom(projectOf({ zone: "6A", layers }))[0]!).summary;
  }
  const at = (R: number): readonly MemberSummary[] => [
    ...boards.map((kind) => runWall({ zone: "6A", ci: { board: kind, R } })),
    foilFaced(R),
  ];

  it.each([5, 11.25])(
    "R-%d: temperatures agree within 0.5 K and the wood's peak rises with the board's tightness",
    (R) => {
      const summaries = at(R);
      const faces = summaries.map((summary) => summary.coldestMonth.temperature_C);
      expect(Math.max(...faces) - Math.min(...faces)).toBeLessThan(0.5);
      const peaks = summaries.map((summary) => summary.peakMoisture_percent!);
      for (let step = 1; step < peaks.length; step += 1) expect(peaks[step]!).toBeGreaterThan(peaks[step - 1]!);
    },
  );

  it("at R-5 the inner face's own winter peak hardly differs between the boards: temperature governs it", () => {
    const faces = at(5).map((summary) => summary.peakFaceMoisture_percent!);
    expect(Math.max(...faces) - Math.min(...faces)).toBeLessThan(3);
  });

  it("polyisocyanurate of the same label leaves the sheathing colder: it loses R in the cold", () => {
    // By its measured curve a good part of its R at 24 °C is gone below freezing (SEEN, trade measurements), where the others gain;
    // 1.3 K were found at R-5. So a label's R is not the same R in January.
    const foil = runWall({ zone: "6A", ci: { board: "pir_foil", R: 5 } });
    const extruded = at(5)[2]!;
    expect(foil.coldestMonth.temperature_C).toBeLessThan(extruded.coldestMonth.temperature_C - 0.5);
    expect(foil.peakMoisture_percent!).toBeGreaterThan(extruded.peakMoisture_percent!);
  });

  it("at R-5 wool does not do away with the retarder inside: the inner face is above its limit with paint, below with Class II", () => {
    const paint = at(5)[0]!;
    const retarded = runWall({ zone: "6A", retarder: "classII", ci: { board: "stone_wool_board", R: 5 } });
    expect(paint.thirtyDayHumidity).toBeGreaterThan(0.9);
    expect(retarded.thirtyDayHumidity).toBeLessThan(paint.thirtyDayHumidity - 0.05);
  });
});

describe("damp-sprayed cellulose, zone 6A, closed in on 1 May", () => {
  /** Days until the fill as a whole is below 18 % by mass, counting on after the first year as not dried. */
  function daysToDry(outside: "none" | "foil", inside: Retarder): number {
    const fill = { id: "cavity", material: "cellulose_dense", thickness_m: 0.1397 } as const;
    const layers = [
      ...cladding,
      wrb,
      ...(outside === "foil" ? board("pir_foil", 10) : []),
      sheathing,
      fill,
      ...lining(inside),
    ];
    const aCase = casesFrom(projectOf({ zone: "6A", layers, years: 1 }))[0]!;
    // Sprayed at about 45 % by mass over a dry density of 56 kg/m3: 25 kg/m3, 3.5 kg on a square metre.
    const wet = wetted(aCase, "cavity", { moistureContent_percent: 45 }, "05-01", 1);
    const { result } = runCase(wet);
    const mean = result.probes.find((probe) => probe.kind === "layerMean" && probe.layer === "cavity")!;
    const hour = mean.w_kgm3.findIndex((water) => water < 0.18 * 56);
    return hour === -1 ? Infinity : hour / 24;
  }

  // Closed in on 1 October the same open wall dries to 30 % in two months, stays there all winter and is at 18 % after 240 days: from
  // November the sheathing side is too cold to give water off. The trials below do not tell their months; a building season is taken.
  it("an open wall dries within five months; between foil and plastic it is wet after a year", () => {
    // Canadian field trials, as a trade journal tells them: near normal in two to five months; the failures lay between plastic sheet
    // and foil-faced board, wet after a year and more (SEEN, second-hand).
    expect(daysToDry("none", "paint10")).toBeLessThan(150);
    expect(daysToDry("foil", "poly")).toBe(Infinity);
  });
});

it("the R of the boards compared is the label's", () => {
  const aCase = caseOfWall({ zone: "6A", ci: { board: "pir_foil", R: 11.25 } });
  expect(aCase.layers.find((layer) => layer.id === "ci")!.thickness_m).toBeGreaterThan(11 * rsiPerR * 0.02);
});
