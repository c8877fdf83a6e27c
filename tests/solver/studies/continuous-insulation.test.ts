import { describe, expect, it } from "vitest";
import { casesOf, demoProject, type Option } from "../../../solver/model/index.ts";
import {
  hasContinuousInsulation,
  withContinuousInsulation,
  withoutContinuousInsulation,
} from "../../../solver/studies/index.ts";

const [bare, insulated] = demoProject.options as [Option, Option];
const ids = (option: Option, path = 0): string[] => option.paths[path]!.layers.map((layer) => layer.id);

describe("with and without continuous insulation by one action", () => {
  it("puts the board outside of the sheathing and its membrane, inside of the air space, on every path", () => {
    const changed = withContinuousInsulation(bare, { material: "xps", thickness_m: 0.0508, id: "B" });
    for (const path of [0, 1]) {
      const order = ids(changed, path);
      expect(order.indexOf("ci")).toBe(order.indexOf("gap") + 1);
      expect(order.indexOf("ci")).toBeLessThan(order.indexOf("wrb"));
    }
    expect(changed.id).toBe("B");
    expect(hasContinuousInsulation(changed)).toBe(true);
    expect(hasContinuousInsulation(bare)).toBe(false);
  });

  it("takes it away again and leaves the wall as it was", () => {
    const back = withoutContinuousInsulation(
      withContinuousInsulation(bare, { material: "stone_wool_board", thickness_m: 0.05, name: bare.name }),
    );
    expect(back).toEqual(bare);
    expect(ids(withoutContinuousInsulation(insulated))).toEqual(ids(bare));
  });

  it("replaces a board that stands there already", () => {
    const changed = withContinuousInsulation(insulated, { material: "eps_ii", thickness_m: 0.075 });
    const boards = changed.paths[0]!.layers.filter((layer) => layer.material === "eps_ii" || layer.material === "xps");
    expect(boards.map((layer) => layer.material)).toEqual(["eps_ii"]);
  });

  it("leaves a ledger as it is drawn: the bearing goes through", () => {
    const ledger: Option = { ...bare, paths: [bare.paths[0]!, { ...bare.paths[1]!, id: "ledger", kind: "ledger" }] };
    const changed = withContinuousInsulation(ledger, { material: "xps", thickness_m: 0.05 });
    expect(ids(changed, 0)).toContain("ci");
    expect(ids(changed, 1)).not.toContain("ci");
  });

  it("moves a leak that met the board to the plane behind it", () => {
    const leaky: Option = {
      ...insulated,
      paths: insulated.paths.map((path) => ({
        ...path,
        leaks: [{ id: "leak", to: "ci", at: "inside" as const, flow_m3hm2: 0.1 }],
      })),
    };
    const leak = withoutContinuousInsulation(leaky).paths[0]!.leaks![0]!;
    expect(leak).toMatchObject({ to: "wrb", at: "outside" });
  });

  it("gives options that the project accepts", () => {
    const project = {
      ...demoProject,
      options: [bare, withContinuousInsulation(bare, { material: "xps", thickness_m: 0.0508, id: "C", name: "with" })],
    };
    expect(casesOf(project).ok).toBe(true);
  });

  it("refuses a board that is nothing or nobody knows", () => {
    expect(() => withContinuousInsulation(bare, { material: "xps", thickness_m: 0 })).toThrow(
      /thickness_m must be > 0/,
    );
    expect(() => withContinuousInsulation(bare, { material: "unknown", thickness_m: 0.05 })).toThrow(
      /catalogue or the project/,
    );
  });
});
