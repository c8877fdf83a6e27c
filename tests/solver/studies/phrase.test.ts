import { describe, expect, it } from "vitest";
import { amount, phrase, say, sayAmount } from "../../../solver/studies/index.ts";
import { rsiPerR } from "../../../solver/units.ts";

describe("amounts in the reader's units", () => {
  it.each([
    ["temperature", 3.4, "38 °F", "3.5 °C"],
    ["temperature", -0.2, "32 °F", "0 °C"],
    ["temperatureDifference", 5, "9 °F", "5 K"],
    ["humidity", 0.364, "36 %", "36 %"],
    ["moisture", 17.6, "18 %", "18 %"],
    ["board", 0.0635, "2½ in.", "64 mm"],
    ["board", 0.0111, "7/16 in.", "11 mm"],
    ["board", 0.1397, "5½ in.", "140 mm"],
    ["thickness", 0.05207, "2.05 in.", "52 mm"],
    ["days", 1, "1 day", "1 day"],
    ["days", 231.4, "231 days", "231 days"],
  ] as const)("%s of %d", (kind, value, ip, si) => {
    expect(sayAmount(amount(kind, value), "ip")).toBe(ip);
    expect(sayAmount(amount(kind, value), "si")).toBe(si);
  });

  it("never rounds an R-value that has quarters", () => {
    expect(sayAmount(amount("resistance", 11.25 * rsiPerR), "ip")).toBe("R-11.25");
    expect(sayAmount(amount("resistance", 20 * rsiPerR), "ip")).toBe("R-20");
  });

  it("gives water as cups in a 4 by 8 ft sheet or per square metre", () => {
    // A sheet is 2.973 m2, a cup 0.2366 kg: 0.28 kg/m2 is 3.5 cups.
    expect(sayAmount(amount("water", 0.28), "ip")).toBe("3½ cups in each 4×8 sheet");
    expect(sayAmount(amount("water", 0.28), "si")).toBe("0.28 kg/m²");
    expect(sayAmount(amount("water", 0.02), "ip")).toBe("¼ cup in each 4×8 sheet");
    expect(sayAmount(amount("water", 0.001), "ip")).toMatch(/less than a quarter cup/);
    expect(sayAmount(amount("water", 0.05), "si")).toBe("50 g/m²");
  });

  it("ends a sentence once after an inch, and writes minus as a minus", () => {
    expect(say(phrase`Use ${amount("board", 0.0508)}.`, "ip")).toBe("Use 2 in.");
    expect(say(phrase`It is ${amount("temperature", -18.6)}.`, "ip")).toBe("It is −1 °F.");
  });

  it("says what is not known instead of NaN", () => {
    expect(say(phrase`The face is at ${amount("temperature", Number.NaN)}.`, "ip")).toBe("The face is at not known.");
  });
});
