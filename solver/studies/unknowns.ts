import type { Case, CaseLayer } from "../model/index.ts";
import {
  withIndoor,
  withLayer,
  withLeakAtPlane,
  withMaterial,
  withRoomShifted,
  withSite,
  withWinterHumidity,
  withoutLayer,
} from "./change-case.ts";
import { withConductivityTimes, withPermeanceTimes, permeance_kgm2sPa } from "./material-figures.ts";
import { condensingPlane, exteriorInsulation, isInsulation } from "./plane.ts";
import { kgm2sPaPerPerm } from "../units.ts";

/** How well an input is usually known. */
export type Known = "good" | "fair" | "poor" | "order of magnitude" | "unknown" | "known";

/**
 * One input that is unknown or often misjudged, with the range that is tried. `low` and `high` are editable data; the
 * value a case has now lies between them or not, as it happens.
 */
export interface Unknown {
  readonly id: string;
  readonly label: string;
  readonly unit: string;
  readonly low: number;
  readonly high: number;
  /** How the range is walked between its ends. "ends": only the two ends mean anything. */
  readonly scale: "line" | "log" | "ends";
  readonly known: Known;
  readonly source: string;
  /** Words for the ends where a number says little. */
  readonly endLabels?: readonly [string, string];
}

/** An unknown together with what it does to a case. */
export interface UnknownOfCase extends Unknown {
  /** The value in the case as drawn; null where the case has none of the same kind (a leak driven by wind, a computed room). */
  readonly now: number | null;
  readonly apply: (aCase: Case, value: number) => Case;
}

const practice = "common practice, no source";

/** The usual ranges, in the order in which they are tried. Editable by the user; each says where it comes from. */
export const usualUnknowns: readonly Unknown[] = [
  {
    id: "airLeak",
    label: "Room air leaking to the sheathing",
    unit: "m³/(h m²)",
    low: 0,
    high: 0.2,
    scale: "line",
    known: "order of magnitude",
    source: `${practice}; 0.02 L/(s m²), 0.07 m³/(h m²), in a published study (Buildings 2022, 12, 1031; SEEN)`,
  },
  {
    id: "winterHumidity",
    label: "Room humidity in winter",
    unit: "",
    low: 0.25,
    high: 0.5,
    scale: "line",
    known: "poor",
    source:
      "Ueno, monitored double-stud walls, Massachusetts 2011-14: 10-30 % ventilated, 40-50 % without (SEEN, abstract)",
  },
  {
    id: "rainEntry",
    label: "Share of driving rain that gets behind the cladding",
    unit: "",
    low: 0,
    high: 0.01,
    scale: "line",
    known: "poor",
    source: "ANSI/ASHRAE 160: 1 % of the rain that hits the face (MEMORY)",
  },
  {
    id: "finishPermeance",
    label: "Paint or finish on the room side",
    unit: "perm",
    low: 3,
    high: 20,
    scale: "log",
    known: "poor",
    source: "handbook spreads of latex paint (MEMORY)",
  },
  {
    id: "sheathingPermeance",
    label: "Permeance of the sheathing",
    unit: "times",
    low: 0.5,
    high: 2,
    scale: "log",
    known: "fair",
    source: "spread between boards of the same grade (MEMORY)",
  },
  {
    id: "foamResistance",
    label: "Resistance of the outside insulation, aged and cold",
    unit: "of the label",
    low: 0.75,
    high: 1,
    scale: "line",
    known: "fair",
    source: "polyisocyanurate 15-25 % down below 10 °C mean; trade measurements (MEMORY)",
  },
  {
    id: "startMoisture",
    label: "Moisture content of the wood at closing",
    unit: "%",
    low: 12,
    high: 25,
    scale: "line",
    known: "fair",
    source: "metered framing and panels, federal guide: 18 % at most before closing (SEEN); range " + practice,
  },
  {
    id: "weatherYear",
    label: "Weather year",
    unit: "",
    low: 0,
    high: 1,
    scale: "ends",
    known: "fair",
    source: "winter 3 K colder than typical (common practice, no source)",
    endLabels: ["typical year", "cold year"],
  },
  {
    id: "claddingVentilation",
    label: "Air changes behind the cladding",
    unit: "times",
    low: 0.2,
    high: 5,
    scale: "log",
    known: "poor",
    source: "measured: brick 1-10, boards on battens 100-1000 per hour (SEEN, abstract)",
  },
  {
    id: "cavityResistance",
    label: "Resistance of the frame fill as installed",
    unit: "of the label",
    low: 0.9,
    high: 1,
    scale: "line",
    known: "fair",
    source: `gaps and compression; ${practice}`,
  },
  {
    id: "orientation",
    label: "Orientation",
    unit: "",
    low: 0,
    high: 1,
    scale: "ends",
    known: "good",
    source: "north is shaded, south is driven by the sun",
    endLabels: ["north", "south"],
  },
  {
    id: "colour",
    label: "Solar absorptance of the cladding",
    unit: "",
    low: 0.3,
    high: 0.85,
    scale: "line",
    known: "good",
    source: `light to dark; ${practice}`,
  },
  {
    id: "roomTemperature",
    label: "Room temperature against the one drawn",
    unit: "K",
    low: -2,
    high: 2,
    scale: "line",
    known: "fair",
    source: practice,
  },
  {
    id: "drivingRain",
    label: "Driving rain against the file's",
    unit: "times",
    low: 0.5,
    high: 2,
    scale: "log",
    known: "poor",
    source: "exposure, overhang and height dominate (ANSI/ASHRAE 160 factors 0.35 to 1.4; MEMORY)",
  },
  {
    id: "startMonth",
    label: "Month of closing in",
    unit: "",
    low: 0,
    high: 1,
    scale: "ends",
    known: "known",
    source: practice,
    endLabels: ["April", "October"],
  },
];

/** A layer that may or may not be there: found in an old wall only when it is opened. Low: without it. */
export const layerMayBeThere = (layer: string, name: string): Unknown => ({
  id: `layer:${layer}`,
  label: `${name}, there or not`,
  unit: "",
  low: 0,
  high: 1,
  scale: "ends",
  known: "unknown",
  source: "not known until the wall is opened",
  endLabels: ["without", "with"],
});

/** The unknowns that mean something in this case, with their effect; others are left out. A laboratory case has none. */
export function unknownsOf(aCase: Case, unknowns: readonly Unknown[] = usualUnknowns): readonly UnknownOfCase[] {
  if (aCase.exposure.kind !== "site") return [];
  return unknowns.flatMap((unknown) => {
    const effect = effectOf(aCase, unknown);
    return effect === null ? [] : [{ ...unknown, ...effect }];
  });
}

type Effect = Pick<UnknownOfCase, "now" | "apply">;

function effectOf(aCase: Case, unknown: Unknown): Effect | null {
  if (aCase.exposure.kind !== "site") return null;
  const { site, indoor, face } = aCase.exposure;
  const plane = condensingPlane(aCase);
  switch (unknown.id) {
    case "airLeak": {
      const here = aCase.leaks.filter((leak) => leak.to === plane.layer);
      const now =
        here.length === 0
          ? 0
          : here.length === 1 && typeof here[0]!.flow_m3hm2 === "number"
            ? here[0]!.flow_m3hm2
            : null;
      return { now, apply: withLeakAtPlane };
    }
    case "winterHumidity":
      return {
        now:
          indoor.method === "seasonal"
            ? indoor.winterRelativeHumidity
            : indoor.method === "fixed"
              ? typeof indoor.relativeHumidity === "number"
                ? indoor.relativeHumidity
                : Math.min(...indoor.relativeHumidity)
              : null,
        apply: (each, value) => withIndoor(each, (room) => withWinterHumidity(room, value)),
      };
    case "roomTemperature":
      return withRoomShifted(indoor, 0) === null
        ? null
        : { now: 0, apply: (each, value) => withIndoor(each, (room) => withRoomShifted(room, value)!) };
    case "rainEntry": {
      const leakTo = site.rain?.leakTo ?? plane.wood ?? plane.layer;
      return {
        now: site.rain?.leakShare ?? 0,
        apply: (each, value) => withSite(each, (old) => ({ ...old, rain: { ...old.rain, leakShare: value, leakTo } })),
      };
    }
    case "drivingRain":
      return (site.rain?.leakShare ?? 0) === 0 && !takesRain(aCase)
        ? null
        : {
            now: 1,
            apply: (each, value) =>
              withSite(each, (old) => ({
                ...old,
                rain: { ...old.rain, exposureFactor: (old.rain?.exposureFactor ?? 1) * value },
              })),
          };
    case "weatherYear": {
      const weather = site.weather;
      if (!("city" in weather)) return null;
      return {
        now: weather.year === "cold" ? 1 : 0,
        apply: (each, value) =>
          withSite(each, (old) =>
            "city" in old.weather
              ? { ...old, weather: { ...old.weather, year: value >= 0.5 ? "cold" : "typical" } }
              : old,
          ),
      };
    }
    case "orientation":
      return {
        now: face.azimuth_deg > 90 && face.azimuth_deg < 270 ? 1 : 0,
        apply: (each, value) =>
          withSite(each, (old) => ({ ...old, face: { ...old.face, azimuth_deg: value >= 0.5 ? 180 : 0 } })),
      };
    case "colour":
      return {
        now: face.solarAbsorptance,
        apply: (each, value) => withSite(each, (old) => ({ ...old, face: { ...old.face, solarAbsorptance: value } })),
      };
    case "startMonth":
      return {
        now: aCase.run.start.startsWith("04") ? 0 : 1,
        apply: (each, value) => ({ ...each, run: { ...each.run, start: value >= 0.5 ? "10-01" : "04-01" } }),
      };
    case "startMoisture": {
      const wooden = woodenLayers(aCase);
      return wooden.length === 0
        ? null
        : {
            now: null,
            apply: (each, value) =>
              wooden.reduce(
                (changed, layer) =>
                  withLayer(changed, layer.id, (old) => ({
                    ...old,
                    initial: { water_kgm3: (value / 100) * old.material.density_kgm3! },
                  })),
                each,
              ),
          };
    }
    case "finishPermeance":
      return finishEffect(aCase);
    case "sheathingPermeance":
      return plane.wood === null
        ? null
        : {
            now: 1,
            apply: (each, value) => withMaterial(each, plane.wood!, (material) => withPermeanceTimes(material, value)),
          };
    case "foamResistance":
      return resistanceEffect(exteriorInsulation(aCase));
    case "cavityResistance":
      return resistanceEffect([aCase.layers[plane.frame]!].filter(isInsulation));
    case "claddingVentilation":
      return ventilationEffect(aCase);
    default:
      return unknown.id.startsWith("layer:") ? presenceEffect(aCase, unknown.id.slice("layer:".length)) : null;
  }
}

const woodenLayers = (aCase: Case): readonly CaseLayer[] =>
  aCase.layers.filter((layer) => layer.material.wood === true && layer.material.density_kgm3 !== undefined);

/** Rain is taken up by a bare bulk face that draws water. */
const takesRain = (aCase: Case): boolean => aCase.layers[0]?.material.liquid !== undefined;

function resistanceEffect(layers: readonly CaseLayer[]): Effect | null {
  if (layers.length === 0) return null;
  return {
    now: 1,
    apply: (each, value) =>
      layers.reduce(
        (changed, layer) => withMaterial(changed, layer.id, (material) => withConductivityTimes(material, 1 / value)),
        each,
      ),
  };
}

/** The coating or membrane furthest to the room; walls lined without one have none to vary. Its permeance at 50 % is set, its curve kept. */
function finishEffect(aCase: Case): Effect | null {
  const finish = [...aCase.layers].reverse().find((layer) => layer.material.kind === "membrane");
  const innermostBulk = [...aCase.layers].reverse().find((layer) => layer.material.kind === "bulk");
  if (
    finish === undefined ||
    innermostBulk === undefined ||
    aCase.layers.indexOf(finish) < aCase.layers.indexOf(innermostBulk)
  )
    return null;
  const permeance = permeance_kgm2sPa(finish.material, finish.thickness_m, 0.5);
  if (permeance === null || permeance <= 0) return null;
  const now = permeance / kgm2sPaPerPerm;
  return {
    now,
    apply: (each, value) => withMaterial(each, finish.id, (material) => withPermeanceTimes(material, value / now)),
  };
}

function ventilationEffect(aCase: Case): Effect | null {
  const spaces = aCase.layers.filter(
    (layer) => typeof layer.airChangesPerHour === "number" && layer.airChangesPerHour > 0,
  );
  if (spaces.length === 0) return null;
  return {
    now: 1,
    apply: (each, value) =>
      spaces.reduce(
        (changed, space) =>
          withLayer(changed, space.id, (layer) => ({
            ...layer,
            airChangesPerHour: (space.airChangesPerHour as number) * value,
          })),
        each,
      ),
  };
}

function presenceEffect(aCase: Case, layerId: string): Effect | null {
  if (!aCase.layers.some((layer) => layer.id === layerId)) return null;
  return { now: 1, apply: (each, value) => (value >= 0.5 ? each : withoutLayer(each, layerId)) };
}

/** Value at a share 0..1 of the way from low to high. */
export function valueAt(unknown: Unknown, share: number): number {
  if (unknown.scale === "ends") return share >= 0.5 ? unknown.high : unknown.low;
  if (unknown.scale === "log" && unknown.low > 0) return unknown.low * (unknown.high / unknown.low) ** share;
  return unknown.low + (unknown.high - unknown.low) * share;
}

/** Share of the way from low to high at which a value stands, cut to 0..1. */
export function shareOf(unknown: Unknown, value: number): number {
  const share =
    unknown.scale === "log" && unknown.low > 0 && value > 0
      ? Math.log(value / unknown.low) / Math.log(unknown.high / unknown.low)
      : (value - unknown.low) / (unknown.high - unknown.low);
  return Math.min(1, Math.max(0, share));
}
