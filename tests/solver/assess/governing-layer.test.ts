import { describe, expect, it } from "vitest";
import { governingLayer } from "../../../solver/assess/index.ts";
import type { CaseLayer } from "../../../solver/model/index.ts";
import { frameLayers, layer } from "./synthetic.ts";

const of = (layers: readonly CaseLayer[]): { layer: string; kind: string; condensing: string } => {
  const found = governingLayer({ layers });
  return { layer: found.layer.id, kind: found.kind, condensing: found.condensing.id };
};
const gap = (): CaseLayer => layer("gap", "vent_cavity_19", 0.019, { airChangesPerHour: 50 });
const inner = (): CaseLayer[] => [layer("batt", "glass_fibre_batt", 0.14), layer("gypsum", "gypsum_board_127", 0.0127)];

// Which layer decides a wall is the trade's judgement: common practice, no source.
describe("the governing layer", () => {
  it("is the strand board of a frame wall, and its inner face the condensing plane", () => {
    expect(of(frameLayers())).toEqual({ layer: "osb", kind: "sheathing", condensing: "osb" });
  });

  it("is the board behind exterior insulation, not wood siding outside of the gap", () => {
    const layers = [
      layer("siding", "western_redcedar", 0.019),
      gap(),
      layer("foam", "xps", 0.051),
      layer("osb", "osb_111", 0.0111),
      ...inner(),
    ];
    expect(of(layers)).toEqual({ layer: "osb", kind: "sheathing", condensing: "osb" });
  });

  it("condenses at the foam when foam is laminated to the inside of the board", () => {
    const layers = [
      layer("siding", "fibre_cement", 0.008),
      gap(),
      layer("osb", "insul_sheath_osb", 0.0111),
      layer("foam", "insul_sheath_pir", 0.025),
      ...inner(),
    ];
    expect(of(layers)).toEqual({ layer: "osb", kind: "sheathing", condensing: "foam" });
  });

  it("stays the board when the bay behind it is empty", () => {
    const layers = [
      layer("siding", "fibre_cement", 0.008),
      gap(),
      layer("foam", "xps", 0.102),
      layer("osb", "osb_111", 0.0111),
      layer("bay", "air_89", 0.089),
      layer("gypsum", "gypsum_board_127", 0.0127),
    ];
    expect(of(layers)).toEqual({ layer: "osb", kind: "sheathing", condensing: "osb" });
  });

  it("is the board at a stud as well as in the bay", () => {
    const layers = [
      layer("siding", "fibre_cement", 0.008),
      gap(),
      layer("osb", "osb_111", 0.0111),
      layer("stud", "spf_framing", 0.14),
      layer("gypsum", "gypsum_board_127", 0.0127),
    ];
    expect(of(layers)).toEqual({ layer: "osb", kind: "sheathing", condensing: "osb" });
  });

  it("is the heavier board where a wood-fibre board insulates outside of it", () => {
    const layers = [
      layer("siding", "fibre_cement", 0.008),
      gap(),
      layer("fibre", "wood_fibre_board", 0.06),
      layer("ply", "plywood_softwood_127", 0.0127),
      ...inner(),
    ];
    expect(of(layers).layer).toBe("ply");
  });

  it("is the brick of a solid wall insulated inside, and not the veneer in front of a frame", () => {
    const solid = [layer("brick", "brick_historic", 0.33), ...inner()];
    expect(of(solid)).toEqual({ layer: "brick", kind: "masonry", condensing: "brick" });
    const veneer = [
      layer("brick", "brick_veneer", 0.09),
      layer("gap", "vent_cavity_25_brick", 0.025, { airChangesPerHour: 5 }),
      layer("wrap", "housewrap", 0),
      layer("osb", "osb_111", 0.0111),
      ...inner(),
    ];
    expect(of(veneer)).toEqual({ layer: "osb", kind: "sheathing", condensing: "osb" });
  });

  it("is the foam behind the cladding where a frame has no sheathing board", () => {
    const layers = [layer("siding", "fibre_cement", 0.008), gap(), layer("foam", "xps", 0.038), ...inner()];
    expect(of(layers)).toEqual({ layer: "foam", kind: "plane", condensing: "foam" });
  });

  it("is the log of a log wall", () => {
    expect(of([layer("log", "clt_spruce", 0.2)]).layer).toBe("log");
  });

  it("refuses a path without layers", () => {
    expect(() => governingLayer({ layers: [] })).toThrow(/at least one layer, got 0/);
  });
});
