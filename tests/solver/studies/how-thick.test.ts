import { describe, expect, it } from "vitest";
import {
  answerOf,
  howThick,
  howThickInEach,
  planeResistances,
  roomDewPoint_C,
  runStudy,
  say,
  steadyFace_C,
  type HowThickAnswer,
  type Member,
} from "../../../solver/studies/index.ts";
import { rsiPerR } from "../../../solver/units.ts";
import { withThickness } from "../../../solver/studies/change-case.ts";
import { fakeRun, frameWall, winter_C } from "./fake-run.ts";

const run = (member: Member) => fakeRun(member.case);
const question = { case: frameWall(0.0508), layer: "foam" };

/** Peak of the stand-in run is 20 % where the face is 5/1.2 K below the dew point: solved here by halving, apart from the study. */
function thicknessByHalving(): number {
  let low = 0;
  let high = 0.15;
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2;
    const face = steadyFace_C(winter_C, 21, planeResistances(withThickness(frameWall(0.05), "foam", middle)));
    if (15 + 1.2 * (roomDewPoint_C(21, 0.35) - face) > 20) low = middle;
    else high = middle;
  }
  return high;
}

describe("how thick", () => {
  it("finds the thickness at which the last finding begins to hold, and the next stock board", () => {
    const answer = answerOf(howThick(question), run);
    const exact = thicknessByHalving();
    expect(answer.governing).toBe("woodMoisture");
    // The search stops at a bracket of a sixteenth of an inch.
    expect(Math.abs(answer.needed_m! - exact)).toBeLessThan(0.0254 / 16);
    expect(answer.board_m!).toBeGreaterThanOrEqual(answer.needed_m!);
    expect(answer.margin_m!).toBeCloseTo(answer.board_m! - answer.needed_m!, 9);
    expect(
      answer.points
        .filter((point) => point.stock && point.thickness_m < answer.board_m!)
        .every((point) => point.summary.peakMoisture_percent! > 20),
    ).toBe(true);
  });

  it("says that a finding is out of reach when no thickness holds it", () => {
    const answer = answerOf(howThick(question), (member) => {
      const summary = run(member);
      return {
        ...summary,
        findings: [
          ...summary.findings,
          { ...summary.findings[0]!, id: "decay", measured: 40, limit: 20, margin: -20, holds: false },
        ],
      };
    });
    expect(answer.needed_m).toBeNull();
    expect(answer.board_m).toBeNull();
    expect(answer.outOfReach).toEqual(["decay"]);
    expect(say(answer.lead, "ip")).toMatch(/Nothing up to 6 in\. holds every finding/);
  });

  it("says that none is needed when every finding holds bare", () => {
    const answer = answerOf(howThick({ ...question, hold: ["condensate"] }), (member) => {
      const summary = run(member);
      return { ...summary, findings: summary.findings.map((each) => ({ ...each, margin: 3, holds: true })) };
    });
    expect(answer.needed_m).toBe(0);
    expect(answer.board_m).toBe(0);
    expect(say(answer.lead, "si")).toMatch(/None is needed/);
  });

  it("keeps findings that only ask for a look apart from those that decide", () => {
    const answer = answerOf(howThick(question), (member) => {
      const summary = run(member);
      const face = summary.coldestMonth.temperature_C;
      return {
        ...summary,
        findings: [
          ...summary.findings,
          {
            ...summary.findings[0]!,
            id: "dewPointMargin",
            measured: face,
            limit: 4,
            margin: face - 4,
            holds: face >= 4,
          },
        ],
      };
    });
    expect(answer.governing).toBe("woodMoisture");
    expect(answer.everyFinding.governing).toBe("dewPointMargin");
    expect(answer.everyFinding.needed_m!).toBeGreaterThan(answer.needed_m!);
    // The board named first keeps every finding; what decides asks for less.
    expect(say(answer.lead, "ip")).toMatch(/^2½ in\. keeps every finding\. .* Those that decide the wall ask for /);
  });

  it("says when a thin board leaves the wood wetter than none", () => {
    const answer = answerOf(howThick(question), (member) => {
      const summary = run(member);
      return /, (13|25) mm/.test(member.label) ? { ...summary, peakMoisture_percent: 30 } : summary;
    });
    expect(answer.worseThanNone).toMatchObject({ from_m: 0.0127, to_m: 0.0254, measure: "peakMoisture", worst: 30 });
    expect(answerOf(howThick(question), run).worseThanNone).toBeNull();
  });

  it("gives a partial answer from the first members and keeps it when it is stopped", () => {
    const study = runStudy(howThick(question), run);
    study.next();
    study.next();
    const stopped = study.next("stop");
    const answer = stopped.value as HowThickAnswer;
    expect(stopped.done).toBe(true);
    expect(answer.points.length).toBe(2);
    expect(answer.points[0]!.thickness_m).toBe(0);
    expect(answer.missing).toBeGreaterThan(0);
  });

  it("sets the code row and the hand rule beside the answer and says why they differ", () => {
    const row = {
      edition: "IRC 2021",
      row: "Table R702.7(3), zone 6, over 2x6",
      least_m2KW: 11.25 * rsiPerR,
      source: "IRC 2021 Table R702.7(3) (SEEN)",
    };
    const answer = answerOf(
      howThick({ ...question, codeRow: row, winter: { outdoor_C: winter_C, room_C: 21, roomHumidity: 0.35 } }),
      run,
    );
    expect(answer.beside.code!.thickness_m).toBeCloseTo(11.25 * rsiPerR * 0.029, 6);
    expect(answer.beside.ratioRule!.thickness_m).toBeGreaterThan(answer.needed_m!);
    expect(answer.beside.why.map((reason) => say(reason, "ip")).join(" ")).toMatch(
      /The row serves a whole zone.*asks for less than the hand rule/s,
    );
  });

  it("asks the same of several walls at once", () => {
    const [here, colder] = answerOf(howThickInEach([question, { ...question, hold: ["condensate"] }]), run);
    expect(here!.needed_m).toBeCloseTo(answerOf(howThick(question), run).needed_m!, 9);
    expect(colder!.needed_m).not.toBe(here!.needed_m);
  });

  it("leaves the board out at no thickness, and leaks that met it meet its inward neighbour", () => {
    const leaky = { ...frameWall(0.05), leaks: [{ to: "foam", at: "inside" as const, flow_m3hm2: 0.1 }] };
    const bare = withThickness(leaky, "foam", 0);
    expect(bare.layers.map((layer) => layer.id)).not.toContain("foam");
    expect(bare.leaks[0]!.to).toBe("strand");
  });
});
