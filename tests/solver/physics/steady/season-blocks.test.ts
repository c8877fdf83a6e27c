import { expect, it } from "vitest";
import { seasonBlocks } from "../../../../solver/physics/steady/index.ts";
import { rowsOf, walls } from "./fixtures.ts";

it("gives the block climate's temperatures, condensate and drying to the printed digits", () => {
  for (const row of rowsOf("glaser_block_climate.csv")) {
    const wall = walls[row["case"]!.slice(-2)]!;
    const result = seasonBlocks(wall);
    const inwards = [...result.temperature_C].reverse();
    row["theta_interfaces_C"]!.split(";").forEach((text, plane) => expect(inwards[plane]).toBeCloseTo(Number(text), 3));
    const [plane, grams] = row["condensate_g_m2 (interface:value)"]!.split(":").map(Number);
    expect(result.condensate_kgm2[wall.length - plane!]! * 1000).toBeCloseTo(grams!, 2);
    expect(result.condensateTotal_kgm2 * 1000).toBeCloseTo(grams!, 2);
    expect(result.evaporable_kgm2 * 1000).toBeCloseTo(Number(row["evaporable_g_m2"]), 2);
  }
});

it("lets a wall fail by its drying as well as by its amount", () => {
  expect(seasonBlocks(walls["S1"]!).drains).toBe(false);
  expect(seasonBlocks(walls["S2"]!).drains).toBe(true);
});
