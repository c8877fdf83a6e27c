import { describe, expect, it } from "vitest";
import { kgm2sPaPerPerm, usualUnknowns } from "../../../solver/index.ts";
import { splitAnswer } from "../../../renderer/questions/parts/split-answer.ts";
import { parseRange, rangeFigure, rewordFlows, unknownText } from "../../../renderer/questions/parts/unknown-words.ts";
import { parsePaint } from "../../../renderer/questions/sentence/room-inputs.tsx";

const unknown = (id: string) => usualUnknowns.find((each) => each.id === id)!;

describe("an answer in two sizes", () => {
  it("is parted after its first sentence when it is long", () => {
    const first = "None is needed: every finding that decides holds without it.";
    const rest = "To close those that ask for a look as well it takes 2.47 in.";
    expect(splitAnswer(`${first} ${rest}`)).toEqual({ first, rest });
  });

  it("does not end at the stop of an inch when the rest fits on the line", () => {
    const answer = "2½ in. 2.05 in. would do; the board leaves 0.45 in. in hand.";
    expect(splitAnswer(answer)).toEqual({ first: answer, rest: "" });
  });
});

describe("inputs that are often wrong", () => {
  it("are said in the units of the window", () => {
    expect(unknownText(unknown("airLeak"), 0.2, "si")).toBe("0.2 m³/(h m²)");
    // 1 m3/(h m2) is a column of 1 m, 3.2808 ft, an hour.
    expect(unknownText(unknown("airLeak"), 0.2, "ip")).toBe("0.656 ft³/(h ft²)");
    expect(rewordFlows("Leak: 0.2 m³/(h m²); room: 45 %", "ip")).toBe("Leak: 0.66 ft³/(h ft²); room: 45 %");
  });

  it("come back from their fields as they went in", () => {
    for (const id of ["airLeak", "winterHumidity", "finishPermeance", "roomTemperature", "colour"])
      for (const units of ["ip", "si"] as const)
        for (const value of [unknown(id).low, unknown(id).high]) {
          const read = parseRange(unknown(id), rangeFigure(unknown(id), value, units), units);
          expect(read.ok && Math.abs(read.value - value)).toBeLessThan(0.002 * Math.max(1, Math.abs(value)));
        }
  });
});

describe("a paint's permeance", () => {
  it("is read as perm, or as the air layer of equal resistance", () => {
    expect(parsePaint("10", "ip")).toEqual({ ok: true, value: 10 });
    expect(parsePaint("10 perm", "si")).toEqual({ ok: true, value: 10 });
    const read = parsePaint("sd 0.35 m", "si");
    // Air lets 2e-10 kg/(m s Pa) through (common practice): 0.35 m of it is 5.71e-10 kg/(m2 s Pa).
    expect(read.ok && read.value * kgm2sPaPerPerm).toBeCloseTo(5.714e-10, 12);
  });

  it("is refused with what would be valid", () => {
    const read = parsePaint("matt white", "ip");
    expect(read.ok ? "" : read.message).toMatch(/10 perm/);
  });
});
