import {
  dewPoint_C,
  rankFaces,
  saturationPressure_Pa,
  weatherReport,
  type Issue,
  type LoadSeries,
  type Place,
  type RankedFace,
  type WeatherReport,
} from "../../climate/index.ts";
import { loadsOf, weatherOf, type Case, type NamedTexts, type Project } from "../../solver/index.ts";

/** A year of weather and room air, day by day from the day on which runs begin: what the Exposure sheet draws. */
export interface ExposureSurvey {
  readonly label: string;
  readonly kind: "file" | "synthetic" | "logged";
  readonly place: Place;
  readonly issues: readonly Issue[];
  readonly startDay: number;
  readonly coldest_C: Float32Array;
  readonly mean_C: Float32Array;
  readonly warmest_C: Float32Array;
  readonly dewPoint_C: Float32Array;
  /** On the ground [mm]. */
  readonly rain_mm: Float32Array;
  /** Driven onto the chosen face [kg/m2]. */
  readonly drivingRain_kgm2: Float32Array;
  /** On the chosen face [kWh/m2]. */
  readonly sun_kWhm2: Float32Array;
  readonly room_C: Float32Array;
  /** 0..1 */
  readonly roomHumidity: Float32Array;
  /** Eight faces, wettest first. */
  readonly faces: readonly RankedFace[];
  readonly report: WeatherReport;
}

export type SurveyOutcome =
  | { readonly kind: "survey"; readonly survey: ExposureSurvey }
  | { readonly kind: "issues"; readonly issues: readonly Issue[] };

const days = 365;
const zero_K = 273.15;
const wattHoursPerKWh = 1000;

/** A case without a wall: loads depend on the exposure alone. The face takes all sun, so that what is absorbed is what arrives. */
function exposureCase(project: Project): Case | null {
  const { site, indoor } = project;
  if (!site || !indoor) return null;
  return {
    project: project.name,
    option: "",
    optionName: "",
    path: "exposure",
    pathName: "",
    pathKind: "other",
    layers: [],
    leaks: [],
    probes: [],
    exposure: {
      kind: "site",
      site,
      face: { ...site.face, solarAbsorptance: 1 },
      indoor,
      air: project.air ?? null,
    },
    run: project.run,
  };
}

const meanOf = (series: LoadSeries, hour: number): number =>
  (series.start[hour]! + series.end[hour]!) / 2 + series.bulge[hour]!;

const daily = (ofHour: (hour: number) => number, gather: (hours: number[]) => number): Float32Array =>
  Float32Array.from({ length: days }, (_, day) =>
    gather(Array.from({ length: 24 }, (_, hour) => ofHour(day * 24 + hour))),
  );

function sum(values: ArrayLike<number>): number {
  let total = 0;
  for (let index = 0; index < values.length; index++) total += values[index]!;
  return total;
}
const mean = (values: readonly number[]): number => sum(values) / values.length;

/** Reads the year and its loads on the chosen face, on the four faces, and in the room. */
export function surveyExposure(project: Project, files: NamedTexts): SurveyOutcome {
  const face = project.site?.face;
  const own = exposureCase(project);
  if (!project.site || !face || !own) {
    const message = project.lab
      ? "This project has laboratory faces instead of a site."
      : "No weather and room have been chosen.";
    return { kind: "issues", issues: [{ path: "site", message, remedy: "Choose a place.", severity: "error" }] };
  }
  const read = weatherOf(project.site.weather, files);
  if (!read.ok) return { kind: "issues", issues: read.issues };
  const weather = read.value;
  const made = loadsOf(own, weather, files);
  if (!made.ok) return { kind: "issues", issues: made.issues };
  const { outside, inside, startDay } = made.value;

  const air = (hour: number): number => meanOf(outside.temperature_K, hour) - zero_K;
  const roomAir = (hour: number): number => meanOf(inside.temperature_K, hour) - zero_K;
  return {
    kind: "survey",
    survey: {
      label: weather.label,
      kind: weather.kind,
      place: weather.place,
      issues: [...weather.issues, ...made.issues.filter((issue) => !weather.issues.includes(issue))],
      startDay,
      coldest_C: daily(air, (hours) => Math.min(...hours)),
      mean_C: daily(air, mean),
      warmest_C: daily(air, (hours) => Math.max(...hours)),
      dewPoint_C: daily((hour) => dewPoint_C(meanOf(outside.vapourPressure_Pa, hour)), mean),
      rain_mm: daily((hour) => weather.rain_mm[(startDay * 24 + hour) % weather.hours]!, sum),
      drivingRain_kgm2: daily((hour) => meanOf(outside.rain_kgm2s, hour) * 3600, sum),
      sun_kWhm2: daily(
        (hour) => meanOf(outside.absorbedRadiation_Wm2, hour),
        (hours) => sum(hours) / wattHoursPerKWh,
      ),
      room_C: daily(roomAir, mean),
      roomHumidity: daily(
        (hour) => meanOf(inside.vapourPressure_Pa, hour) / saturationPressure_Pa(roomAir(hour)),
        mean,
      ),
      faces: rankFaces(weather, face, project.site.rain),
      report: weatherReport(weather),
    },
  };
}
