import type { Case } from "../../../solver/model/index.ts";
import type { ProbeSeries, RunResult } from "../../../solver/run/index.ts";

/** A result with flat series, to test what is read from one; a year long from 1 October. */
export function flatResult(
  aCase: Case,
  over: { readonly moisture_percent?: (hour: number) => number; readonly face_C?: (hour: number) => number } = {},
): RunResult {
  const hours = 8760;
  const series = (of: (hour: number) => number): Float32Array =>
    Float32Array.from({ length: hours }, (_, hour) => of(hour));
  const probes = aCase.layers.flatMap((layer): ProbeSeries[] => {
    const woodDensity_kgm3 = layer.material.wood === true ? (layer.material.density_kgm3 ?? null) : null;
    const density = layer.material.density_kgm3 ?? 1;
    const water = (hour: number): number =>
      woodDensity_kgm3 === null ? 1 : ((over.moisture_percent?.(hour) ?? 12) / 100) * density;
    const base = {
      layer: layer.id,
      label: layer.name,
      depth_m: 0,
      woodDensity_kgm3,
      T_C: series((hour) => over.face_C?.(hour) ?? 5),
      RH: series(() => 0.7),
      w_kgm3: series(water),
    };
    return [
      { ...base, id: `${layer.id}-outside`, side: "outside", kind: "interface" },
      { ...base, id: `${layer.id}-inside`, side: "inside", kind: "interface" },
      { ...base, id: `${layer.id}-mean`, side: null, kind: "layerMean" },
    ];
  });
  const twelve = (value: number): number[] => new Array<number>(12).fill(value);
  const names = aCase.layers.map((layer) => layer.id);
  const strand = names.indexOf("strand");
  return {
    caseHash: "x",
    option: aCase.option,
    path: aCase.path,
    status: "finished",
    failure: null,
    hours,
    startDay: 273,
    judgedFrom: 0,
    judgedHours: hours,
    probes,
    map: {
      days: 365,
      depth_m: Float32Array.from([0, 0.1, 0.2]),
      T_C: new Float32Array(1095),
      RH: new Float32Array(1095).fill(0.7),
      w_kgm3: new Float32Array(1095),
    },
    water: { in: 1, out: 1, stored: 0, closure: 0, byFaceAndSource: {} },
    heat: { in: 1, out: 1, stored: 0, closure: 0, byFaceAndSource: {} },
    monthly: {
      // 0.03 kg/m2 a month leak into the strand board; a third leaves outward, two thirds inward.
      interfaces: names.flatMap((layer, index) => [
        { probe: `${layer}-outside`, vapour: twelve(index <= strand ? -0.01 : 0.02), liquid: twelve(0) },
        { probe: `${layer}-inside`, vapour: twelve(index < strand ? -0.01 : 0.02), liquid: twelve(0) },
      ]),
      sources: [{ layer: "strand", cause: "air leak", gain: twelve(0.03) }],
      stored: names.map((layer) => ({ layer, water: new Array<number>(13).fill(0.5) })),
      heatFromRoom_MJm2: twelve(8),
    },
    yearEndWater_kgm2: [1, 1],
    log: { cells: 80, steps: 9000, rejected: 3, iterations: 30000, seconds: 1 },
  };
}
