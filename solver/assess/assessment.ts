import { dewPoint_C, saturationPressure_Pa, zeroCelsius_K } from "../../climate/index.ts";
import type { HourlyLoads } from "../../climate/index.ts";
import type { Case, CaseLayer } from "../model/index.ts";
import type { ProbeSeries, RunResult } from "../run/index.ts";
import { datesFrom } from "./dates.ts";
import type { Dates } from "./dates.ts";
import type { Finding } from "./finding.ts";
import { governingLayer } from "./governing-layer.ts";
import type { GoverningLayer } from "./governing-layer.ts";
import { hourlyMeans } from "./hourly-air.ts";
import { mouldClassOf } from "./mould-class.ts";
import { cautiousDecline } from "./mould-index.ts";
import type { MouldClass } from "./mould-index.ts";
import type { Sway } from "./swayed-by.ts";
import { inSentence, wordingIn } from "./wording.ts";
import type { Units, Wording } from "./wording.ts";

export interface AssessOptions {
  /** Units of the statements; "si" by default. Measured values stay SI. */
  readonly units?: Units;
  /** The loads the run marched through: with them the room's and the weather's air are known hour by hour. */
  readonly loads?: HourlyLoads | null;
  /** Mould class by layer id, where the user knows better. */
  readonly mouldClass?: Readonly<Record<string, MouldClass>>;
  /** Share of pine's decline of the mould index, 0..1; 0.1 by default. */
  readonly mouldDecline?: number;
  /** Critical degree of saturation of masonry by layer id, 0..1. */
  readonly criticalSaturation?: Readonly<Record<string, number>>;
}

/** A finding before the inputs that sway it are looked up. */
export type Draft = Omit<Finding, "swayedBy"> & {
  readonly sway: Sway;
  /** The layer the finding speaks of, where it is not the governing one. */
  readonly swayLayer?: string;
};

/** One probe over the judged hours. */
export interface JudgedProbe {
  readonly id: string;
  readonly layer: CaseLayer;
  readonly side: "outside" | "inside" | null;
  readonly T_C: Float32Array;
  readonly RH: Float32Array;
  readonly w_kgm3: Float32Array;
  readonly woodDensity_kgm3: number | null;
  /** The whole run, for what carries over from year to year. */
  readonly series: ProbeSeries;
}

export interface RoomAir {
  readonly dewPoint_C: Float64Array;
  /** Null where only the room face of the wall is known. */
  readonly temperature_C: Float64Array | null;
  readonly vapourPressure_Pa: Float64Array;
}

/** All that the criteria look at, worked out once. */
export interface Assessment {
  readonly aCase: Case;
  readonly result: RunResult;
  readonly options: AssessOptions;
  readonly say: Wording;
  readonly dates: Dates;
  readonly governing: GoverningLayer;
  readonly probes: readonly JudgedProbe[];
  face(layer: CaseLayer, side: "outside" | "inside"): JudgedProbe | null;
  mean(layer: CaseLayer): JudgedProbe | null;
  readonly room: RoomAir | null;
  readonly outside_C: Float64Array | null;
  mouldClass(layer: CaseLayer): MouldClass;
  readonly mouldDecline: number;
  /** "the year", or "the run" where no whole year was judged. */
  readonly span: string;
}

/** "the inner face of the OSB sheathing". */
export function placeOf(probe: Pick<JudgedProbe, "side" | "layer">): string {
  const layer = `the ${inSentence(probe.layer.name)}`;
  if (probe.side === null) return layer;
  return `the ${probe.side === "inside" ? "inner" : "outer"} face of ${layer}`;
}

export function assessmentOf(aCase: Case, result: RunResult, options: AssessOptions): Assessment {
  const from = result.judgedFrom;
  const to = from + result.judgedHours;
  const layerById = new Map(aCase.layers.map((layer) => [layer.id, layer]));
  const probes = result.probes.flatMap((series): JudgedProbe[] => {
    const layer = layerById.get(series.layer);
    if (!layer) return [];
    return [
      {
        id: series.id,
        layer,
        side: series.kind === "interface" ? series.side : null,
        T_C: series.T_C.subarray(from, to),
        RH: series.RH.subarray(from, to),
        w_kgm3: series.w_kgm3.subarray(from, to),
        woodDensity_kgm3: series.woodDensity_kgm3,
        series,
      },
    ];
  });
  const byId = new Map(probes.map((probe) => [probe.id, probe]));
  const face = (layer: CaseLayer, side: "outside" | "inside"): JudgedProbe | null => {
    const own = byId.get(`${layer.id}-${side}`);
    if (own) return own;
    // An interface may be kept once: then the neighbour's face is the same place, unless a membrane or a joint parts them.
    const index = aCase.layers.indexOf(layer);
    const neighbour = aCase.layers[side === "inside" ? index + 1 : index - 1];
    const outer = side === "inside" ? layer : neighbour;
    if (!neighbour || neighbour.thickness_m === 0 || layer.thickness_m === 0 || outer?.contact) return null;
    const shared = byId.get(`${neighbour.id}-${side === "inside" ? "outside" : "inside"}`);
    return shared ? { ...shared, layer, side, w_kgm3: shared.w_kgm3, woodDensity_kgm3: null } : null;
  };
  const mean = (layer: CaseLayer): JudgedProbe | null => byId.get(`${layer.id}-mean`) ?? null;
  const innermost = aCase.layers[aCase.layers.length - 1]!;
  const loads = options.loads ?? null;
  // Hourly dew points take longer than the rest together, and a lead sentence needs none.
  let room: { readonly air: RoomAir | null } | null = null;
  let outside_C: Float64Array | null = null;
  return {
    aCase,
    result,
    options,
    say: wordingIn(options.units ?? "si"),
    dates: datesFrom(result.startDay, from, aCase.exposure.kind === "lab"),
    governing: governingLayer(aCase),
    probes,
    face,
    mean,
    get room() {
      room ??= { air: roomAir(loads, face(innermost, "inside"), from, result.judgedHours) };
      return room.air;
    },
    get outside_C() {
      outside_C ??= loads
        ? hourlyMeans(loads, loads.outside.temperature_K, from, result.judgedHours).map(toCelsius)
        : null;
      return outside_C;
    },
    mouldClass: (layer) => options.mouldClass?.[layer.id] ?? mouldClassOf(layer.material),
    span: aCase.exposure.kind === "lab" || result.judgedHours < 8760 ? "the run" : "the year",
    mouldDecline: options.mouldDecline ?? cautiousDecline,
  };
}

const toCelsius = (kelvin: number): number => kelvin - zeroCelsius_K;

/** The room's vapour from its loads; without them from the wall's room face, which stands within a few Pa of it. */
function roomAir(loads: HourlyLoads | null, roomFace: JudgedProbe | null, from: number, hours: number): RoomAir | null {
  const least_Pa = 1;
  const dewPoints = (pressures: Float64Array): Float64Array =>
    pressures.map((pressure) => dewPoint_C(Math.max(pressure, least_Pa)));
  if (loads) {
    const vapourPressure_Pa = hourlyMeans(loads, loads.inside.vapourPressure_Pa, from, hours);
    const temperature_C = hourlyMeans(loads, loads.inside.temperature_K, from, hours).map(toCelsius);
    return { vapourPressure_Pa, temperature_C, dewPoint_C: dewPoints(vapourPressure_Pa) };
  }
  if (!roomFace) return null;
  const vapourPressure_Pa = Float64Array.from(
    roomFace.RH,
    (humidity, hour) => humidity * saturationPressure_Pa(roomFace.T_C[hour]!),
  );
  return { vapourPressure_Pa, temperature_C: null, dewPoint_C: dewPoints(vapourPressure_Pa) };
}
