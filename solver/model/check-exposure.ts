import { outOfScope } from "./checks/scope.ts";
import type { Key, Report } from "./report-issue.ts";
import type { Course, LabFace, Project } from "./project.ts";

const daysOfMonth = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Values of a course that lie outside [low, high] or at times that do not rise. */
function checkCourse(
  course: Course,
  low: number,
  high: number,
  unit: string,
  keys: readonly Key[],
  name: string,
  report: Report,
): void {
  if (typeof course === "number") {
    if (course < low || course > high)
      report(keys, `${name} is ${course}${unit}`, `Enter a value between ${low} and ${high}${unit}.`);
    return;
  }
  const { table } = course;
  for (let i = 0; i < table.length; i++) {
    const [time, value] = table[i]!;
    if (i > 0 && time < table[i - 1]![0])
      return report(
        [...keys, "table"],
        `${name}: row ${i + 1} goes back in time, from ${table[i - 1]![0]} s to ${time} s`,
        "Let the times rise from row to row.",
      );
    if (value < low || value > high)
      return report(
        [...keys, "table"],
        `${name}: row ${i + 1} is ${value}${unit}`,
        `Enter values between ${low} and ${high}${unit}.`,
      );
  }
}

function checkLabFace(face: LabFace, side: "outside" | "inside", report: Report): void {
  const keys: Key[] = ["lab", side];
  const words = side === "outside" ? "the outer face" : "the inner face";
  checkCourse(face.temperature_C, -100, 1000, " degC", [...keys, "temperature_C"], `temperature at ${words}`, report);
  if (face.relativeHumidity !== undefined)
    checkCourse(
      face.relativeHumidity,
      0,
      1,
      "",
      [...keys, "relativeHumidity"],
      `relative humidity at ${words}`,
      report,
    );
  if (face.vapourPressure_Pa !== undefined)
    checkCourse(
      face.vapourPressure_Pa,
      0,
      2e5,
      " Pa",
      [...keys, "vapourPressure_Pa"],
      `vapour pressure at ${words}`,
      report,
    );
  if (face.suction_Pa !== undefined)
    checkCourse(face.suction_Pa, 0, 1e10, " Pa", [...keys, "suction_Pa"], `suction at ${words}`, report);
  const given = [face.relativeHumidity, face.vapourPressure_Pa, face.suction_Pa].filter(
    (value) => value !== undefined,
  ).length;
  if (given > 1)
    report(keys, `${words} has ${given} humidities`, "Give one of relativeHumidity, vapourPressure_Pa, suction_Pa.");
  if (given === 0 && face.vapourFilm_kgm2sPa !== 0)
    report(
      keys,
      `${words} has no humidity`,
      "Give relativeHumidity (0 to 1), vapourPressure_Pa or suction_Pa, or a vapour film of 0 for a vapour-tight face.",
    );
  if (face.heatFilm_Wm2K !== "held")
    checkCourse(face.heatFilm_Wm2K, 0, 1e6, " W/(m2 K)", [...keys, "heatFilm_Wm2K"], `heat film at ${words}`, report);
  if (face.vapourFilm_kgm2sPa !== "held")
    checkCourse(
      face.vapourFilm_kgm2sPa,
      0,
      1,
      " kg/(m2 s Pa)",
      [...keys, "vapourFilm_kgm2sPa"],
      `vapour film at ${words}`,
      report,
    );
  if (face.rain_kgm2s !== undefined)
    checkCourse(face.rain_kgm2s, 0, 1, " kg/(m2 s)", [...keys, "rain_kgm2s"], `rain at ${words}`, report);
}

/** Checks what surrounds the wall: a site with an indoor climate, or laboratory faces; the run's dates; where rain leaks to. */
export function checkExposure(project: Project, report: Report): void {
  const { site, lab, indoor } = project;
  if (site && lab) report(["lab"], "both a site and laboratory faces are given", "Keep one of site and lab.");
  if (!site && !lab)
    report(
      ["site"],
      "neither a site nor laboratory faces are given",
      'Add "site" with a weather year and a face, or "lab" with two faces.',
    );
  if (site && !indoor)
    report(
      ["indoor"],
      "the indoor climate is missing",
      'Add "indoor" with a method: "fixed", "seasonal", "ashrae160", "en15026", "iso13788" or "logger".',
    );
  const refused = outOfScope(project);
  if (refused) report(["site", "face", refused.field], refused.message, refused.remedy);
  if (lab) {
    checkLabFace(lab.outside, "outside", report);
    checkLabFace(lab.inside, "inside", report);
    if (typeof lab.initialTemperature_C !== "number") {
      const rows = lab.initialTemperature_C;
      if (rows.some(([depth], i) => i > 0 && depth <= rows[i - 1]![0]))
        report(
          ["lab", "initialTemperature_C"],
          "the depths of the start temperatures do not rise",
          "Let the depths rise from row to row.",
        );
    }
  }
  if (indoor?.method === "fixed") {
    for (const value of [indoor.temperature_C].flat())
      if (value < -60 || value > 60)
        report(["indoor", "temperature_C"], `indoor temperature is ${value} degC`, "Enter between -60 and 60 degC.");
  }
  if (indoor?.method === "seasonal")
    for (const field of ["winterTemperature_C", "summerTemperature_C"] as const)
      if (indoor[field] < -60 || indoor[field] > 60)
        report(["indoor", field], `indoor temperature is ${indoor[field]} degC`, "Enter between -60 and 60 degC.");
  const [month = 0, day = 0] = project.run.start.split("-").map(Number);
  if (!(month >= 1 && month <= 12 && day >= 1 && day <= (daysOfMonth[month - 1] ?? 0)))
    report(
      ["run", "start"],
      `the run starts on "${project.run.start}", which is no day of the year`,
      'Give month and day like "10-01"; 29 February is not used.',
    );
  const leakTo = site?.rain?.leakTo;
  if (leakTo !== undefined) {
    const without = project.options.filter(
      (option) => !option.paths.some((path) => path.layers.some((layer) => layer.id === leakTo)),
    );
    if (without.length === project.options.length)
      report(
        ["site", "rain", "leakTo"],
        `rain leaks to "${leakTo}", which is no layer of any path`,
        "Choose a layer id that stands behind the water control layer.",
      );
    else
      for (const option of without)
        report(
          ["site", "rain", "leakTo"],
          `rain leaks to "${leakTo}", which option ${option.id} does not have; no rain leaks in there`,
          "Give the layer the same id in every option.",
          "warning",
        );
  }
}
