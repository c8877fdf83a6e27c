import { describe, expect, it } from "vitest";
import {
  answerOf,
  layerMayBeThere,
  runStudy,
  say,
  usualUnknowns,
  whatIf,
  type Member,
  type WhatIfAnswer,
} from "../../../solver/studies/index.ts";
import { fakeRun, frameWall } from "./fake-run.ts";

const run = (member: Member) => fakeRun(member.case);
const thick = frameWall(0.1);

describe("what if we are wrong", () => {
  it("runs the wall as drawn, two ends of eight unknowns and a pessimist", () => {
    const study = whatIf({ case: thick, flips: false });
    const ends = study.members.filter((member) => /:(low|high)$/.test(member.key));
    expect(new Set(ends.map((member) => member.key.split(":")[0])).size).toBe(8);
    // An end that equals what is drawn is answered by the base run: no leak and no rain entry here, and foam at its label.
    expect(ends.length).toBeLessThanOrEqual(16);
    expect(study.members.map((member) => member.key)).toContain("pessimist");
    expect(new Set(study.members.map((member) => member.key)).size).toBe(study.members.length);
  });

  it("sorts the bars by what they move", () => {
    const answer = answerOf(whatIf({ case: thick, flips: false }), run);
    const sizes = answer.bars.map((bar) => Math.max(...bar.moisture_points.map((points) => Math.abs(points ?? 0))));
    expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
    expect(answer.bars[0]!.unknown.id).toBe("winterHumidity");
    expect(answer.bars[0]!.moisture_points[0]!).toBeLessThan(0);
    expect(answer.bars[0]!.moisture_points[1]!).toBeGreaterThan(0);
    expect(answer.pessimist!.summary.peakMoisture_percent!).toBeGreaterThan(
      Math.max(...answer.bars.flatMap((bar) => bar.high?.peakMoisture_percent ?? 0)),
    );
  });

  it("finds the input that turns the answer over first, and where", () => {
    const answer = answerOf(whatIf({ case: frameWall(0.0508) }), run);
    const flip = answer.flips.find((each) => each.unknown.id === "winterHumidity")!;
    const peakAt = (humidity: number): number => {
      const [member] = whatIf({
        case: frameWall(0.0508),
        unknowns: [{ ...usualUnknowns.find((each) => each.id === "winterHumidity")!, high: humidity }],
      }).members.filter((each) => each.key === "winterHumidity:high");
      return fakeRun(member!.case).peakMoisture_percent!;
    };
    expect(peakAt(flip.between[0])).toBeLessThanOrEqual(20);
    expect(peakAt(flip.between[1])).toBeGreaterThan(20);
    expect(Math.abs(flip.between[1] - flip.between[0])).toBeLessThan(0.25 / 8);
    expect(answer.flips.map((each) => each.distance)).toEqual(
      answer.flips.map((each) => each.distance).sort((a, b) => a - b),
    );
    expect(say(answer.lead, "ip")).toMatch(/First to break it: /);
  });

  it("always runs what the user does not know, a layer that may be there included", () => {
    const unknowns = [...usualUnknowns, layerMayBeThere("paint", "Paint")];
    const study = whatIf({ case: thick, unknowns, most: 3, notKnown: ["layer:paint"], flips: false });
    const withoutPaint = study.members.find((member) => member.key === "layer:paint:low");
    expect(withoutPaint!.case.layers.map((layer) => layer.id)).not.toContain("paint");
  });

  it("gives a band from a sample and ranks the inputs that it follows", () => {
    const answer = answerOf(whatIf({ case: thick, sample: { runs: 48, seed: 7 }, flips: false }), run);
    const [low, middle, high] = answer.band!.peakMoisture_percent;
    expect(low).toBeLessThan(middle);
    expect(middle).toBeLessThan(high);
    expect(answer.band!.ranking!.explained).toBeGreaterThan(0.8);
    expect(["winterHumidity", "airLeak"]).toContain(answer.band!.ranking!.inputs[0]!.id);
  });

  it("shows the first bars before the series is through", () => {
    const study = runStudy(whatIf({ case: thick, flips: false }), run);
    for (let step = 0; step < 4; step += 1) study.next();
    const answer = study.next("stop").value as WhatIfAnswer;
    expect(answer.bars.some((bar) => bar.moisture_points[1] !== null)).toBe(true);
    expect(answer.missing).toBeGreaterThan(0);
  });

  it("gives every range a source", () => {
    for (const unknown of usualUnknowns) {
      expect(unknown.source.length).toBeGreaterThan(8);
      expect(unknown.high).toBeGreaterThan(unknown.low);
    }
  });
});
