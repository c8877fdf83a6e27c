import { expect, expectTypeOf, test } from "vitest";
import type { AirSetting, FaceSetting, RainSetting, RoomSetting } from "../../climate/index.ts";
import { hourlyLoads, placeById, syntheticYear } from "../../climate/index.ts";
import type { Air, Face, Indoor, Site } from "../../solver/model/project.ts";
import { airSchema, faceSchema, indoorSchema } from "../../solver/model/project.ts";

test("a project's face, rain, room and air fit the climate's settings as they are", () => {
  expectTypeOf<Face>().toExtend<FaceSetting>();
  expectTypeOf<Site["rain"]>().toExtend<RainSetting | undefined>();
  expectTypeOf<Indoor>().toExtend<RoomSetting>();
  expectTypeOf<Air>().toExtend<AirSetting>();
  const weather = syntheticYear(placeById("burlington-vt")!, { kind: "typical", seed: 1 });
  for (const indoor of [
    { method: "fixed", temperature_C: 21, relativeHumidity: 0.4 },
    { method: "ashrae160" },
    { method: "en15026" },
    { method: "iso13788", humidityClass: 3 },
  ]) {
    const loads = hourlyLoads({
      weather,
      face: faceSchema.parse({ azimuth_deg: 0 }),
      rain: undefined,
      room: indoorSchema.parse(indoor),
      air: airSchema.parse({ ach50: 3 }),
      startDay: 0,
    });
    expect(loads.ok, indoor.method).toBe(true);
  }
});
