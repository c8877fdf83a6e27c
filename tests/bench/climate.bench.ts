import Papa from "papaparse";
import { bench, describe } from "vitest";
import { hourlyLoads, placeById, readEpw, syntheticYear } from "../../climate/index.ts";
import { realFile } from "../climate/support/files.ts";
import { epwHead, epwRows, joinEpw } from "../climate/support/made-files.ts";

const burlington = placeById("burlington-vt")!;
const year = syntheticYear(burlington, { kind: "typical", seed: 1 });
/** A real file where one is at hand, else one made: the same size and fields. */
const text = realFile("USA_VT_Burlington.Intl.AP.726170_TMY3.epw") ?? joinEpw(epwHead(year), epwRows(year));

// Budget: 60 ms and 30 MB for one EPW. The ratio of the first two says what reading straight from character codes is worth.
describe("an EPW of 8760 hours", () => {
  bench("read, checked, repaired and hashed", () => {
    readEpw("bench.epw", text);
  });
  bench("split into fields by papaparse, numbers not yet made", () => {
    Papa.parse(text, { delimiter: ",", newline: "\n" });
  });
});

describe("a year", () => {
  bench("made from normals", () => {
    syntheticYear(burlington, { kind: "typical", seed: 1 });
  });
  bench("turned into loads on both faces", () => {
    hourlyLoads({
      weather: year,
      face: { azimuth_deg: 180, tilt_deg: 90, solarAbsorptance: 0.6, longwaveEmissivity: 0.9 },
      rain: undefined,
      room: { method: "ashrae160", variant: "simplified" },
      air: undefined,
      startDay: 273,
    });
  });
});
