import { describe, expect, it } from "vitest";
import { energyVerdict, howThick, retarderVerdict, type MemberSummary } from "../../solver/index.ts";
import { caseOfWall, runWall } from "./run.ts";
import { retarders, type Retarder } from "./walls.ts";

describe("the same foam over 2x4 and over 2x6, zone 6A", () => {
  // Common practice, no source: more insulation between the studs leaves the sheathing colder.
  it("over 2x6 the sheathing is colder by 1.5 to 4 K, and wetter", () => {
    const [shallow, deep] = (["2x4", "2x6"] as const).map((frame) =>
      runWall({ zone: "6A", frame, ci: { board: "xps", R: 7.5 } }),
    );
    const colder = shallow!.coldestMonth.temperature_C - deep!.coldestMonth.temperature_C;
    expect(colder).toBeGreaterThan(1.5);
    expect(colder).toBeLessThan(4);
    expect(deep!.peakMoisture_percent!).toBeGreaterThan(shallow!.peakMoisture_percent!);
    expect(deep!.thirtyDayHumidity).toBeGreaterThan(shallow!.thirtyDayHumidity);
  });

  it("the hand rule asks for half as much again over R-20 as over R-13, as the table does", () => {
    // IRC 2021 Table R702.7(3): 11.25 over 2x6 against 7.5 over 2x4 in zone 6, a ratio of 1.5 (SEEN). Outdoor winter means from 5A to 8.
    for (const outdoor_C of [-1.3, -6.5, -12, -22.5]) {
      const [shallow, deep] = (["2x4", "2x6"] as const).map((frame) => {
        const base = caseOfWall({ zone: "6A", frame, ci: { board: "xps", R: 7.5 } });
        const beside = howThick({
          case: base,
          layer: "ci",
          winter: { outdoor_C, room_C: 21, roomHumidity: 0.35 },
        }).reduce(new Map()).beside;
        return beside.ratioRule!.thickness_m;
      });
      expect(deep! / shallow!).toBeGreaterThan(1.45);
      expect(deep! / shallow!).toBeLessThan(1.75);
    }
  });
});

describe("20+5 in zone 6A: the energy table is met, the vapour table decides by the class inside", () => {
  const kinds = ["paint10", "paint5", "classII", "poly"] as const satisfies readonly Retarder[];
  const summaries = new Map<Retarder, MemberSummary>();
  const of = (retarder: Retarder): MemberSummary => {
    const known = summaries.get(retarder) ?? runWall({ zone: "6A", retarder, ci: { board: "xps", R: 5 } });
    summaries.set(retarder, known);
    return known;
  };

  it("the wood's peak and the dampest month fall with every tighter retarder", () => {
    // Common practice, no source: without leaks the vapour that reaches the sheathing is what the room side lets through.
    for (let step = 1; step < kinds.length; step += 1) {
      expect(of(kinds[step]!).peakMoisture_percent!).toBeLessThan(of(kinds[step - 1]!).peakMoisture_percent!);
      expect(of(kinds[step]!).thirtyDayHumidity).toBeLessThan(of(kinds[step - 1]!).thirtyDayHumidity);
    }
  });

  it("energy and vapour are two lines: the first is met, Class III is refused at R-5 and asks for R-11.25, Class II is accepted", () => {
    const energy = energyVerdict({ edition: "IRC 2021", zone: "6A", cavity_R: 20, ci_R: 5, U_Wm2K: null });
    expect(energy.verdict).toBe("accept");
    const vapour = {
      edition: "IRC 2021",
      zone: "6A",
      stud: "2x6",
      cavity_R: 20,
      ci_R: 5,
      ciKind: "foam",
      ciClass: "III",
      sprayFoam_R: 0,
      backing: "woodPanel",
      ventedCladding: true,
    } as const;
    const classIII = retarderVerdict({ ...vapour, retarder: "III", wetCup_perm: 10 });
    expect(classIII.verdict).toBe("reject");
    expect(classIII.limit_R).toBe(11.25);
    // Kraft facing: Class II by dry cup, above 1 perm by wet cup (IRC 2021 Table R702.7(2), note c; SEEN).
    expect(retarderVerdict({ ...vapour, retarder: "II", wetCup_perm: 1.5 }).verdict).toBe("accept");
    expect(retarders.classII.permeance_kgm2sPa).toBeLessThan(5.73e-11);
  });
});
