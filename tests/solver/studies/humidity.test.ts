import { describe, expect, it } from "vitest";
import {
  answerOf,
  howHumid,
  roomDewPoint_C,
  say,
  planeResistances,
  steadyFace_C,
  type Member,
} from "../../../solver/studies/index.ts";
import { withWinterHumidity, winterHumidityOf } from "../../../solver/studies/change-case.ts";
import { fakeRun, frameWall, winter_C } from "./fake-run.ts";

const run = (member: Member) => fakeRun(member.case);

describe("how humid may it be inside", () => {
  it("finds the highest winter humidity that keeps every finding", () => {
    const wall = frameWall(0.0508);
    const answer = answerOf(howHumid({ case: wall }), run);
    const face = steadyFace_C(winter_C, 21, planeResistances(wall));
    // The stand-in breaks its limit of 20 % where the dew point is 5/1.2 K above the face.
    const dewAtAnswer = roomDewPoint_C(21, answer.upTo!);
    expect(answer.governing).toBe("woodMoisture");
    expect(Math.abs(dewAtAnswer - face - 5 / 1.2)).toBeLessThan(0.5);
    expect(say(answer.lead, "ip")).toMatch(/^Holds up to \d\d % indoors in winter\./);
  });

  it("does not claim more than was tried when nothing breaks", () => {
    const answer = answerOf(howHumid({ case: frameWall(0.3) }), run);
    expect(answer.beyondRange).toBe(true);
    expect(answer.upTo).toBe(0.6);
    expect(say(answer.lead, "si")).toMatch(/the most that was tried/);
  });

  it("says that the room is not the cause when the driest room breaks a finding", () => {
    const answer = answerOf(
      howHumid({ case: { ...frameWall(0.05), leaks: [{ to: "strand", at: "inside", flow_m3hm2: 3 }] } }),
      run,
    );
    expect(answer.upTo).toBeNull();
    expect(say(answer.lead, "si")).toMatch(/not what breaks this wall/);
  });

  it("gives a dew-point line by month whose least value is the hand rule's", () => {
    const air = {
      outdoor_C: [-8, -6, 0, 7, 14, 19, 22, 20, 15, 9, 3, -4],
      room_C: new Array<number>(12).fill(21),
      roomHumidity: new Array<number>(12).fill(0.35),
    };
    const answer = answerOf(howHumid({ case: frameWall(0.05), air }), run);
    expect(answer.dewPointRule!.month).toBe(0);
    expect(answer.dewPointLine![0]!).toBeLessThan(answer.dewPointLine![3]!);
    expect(answer.ownersLine![0]!).toBeCloseTo(answer.upTo!, 9);
    expect(Math.max(...answer.ownersLine!)).toBeLessThanOrEqual(0.6);
  });

  it("moves every month by the same points where the room is given by months, and says so by its winter value", () => {
    const room = withWinterHumidity(
      {
        method: "fixed",
        temperature_C: 21,
        relativeHumidity: [0.3, 0.3, 0.35, 0.4, 0.5, 0.55, 0.6, 0.6, 0.5, 0.4, 0.35, 0.3],
      },
      0.4,
    );
    expect(winterHumidityOf(room)).toBeCloseTo(0.4, 9);
    expect(room.method === "fixed" && Array.isArray(room.relativeHumidity) && room.relativeHumidity[6]).toBeCloseTo(
      0.7,
      9,
    );
  });
});
