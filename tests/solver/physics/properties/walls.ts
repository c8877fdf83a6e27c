import fc from "fast-check";
import type { Layer, LabFace, Material, Project, RunResult } from "../../../../solver/index.ts";

/** Walls, faces and projects for the property tests: materials of our own, no catalogue, so that a run depends on nothing else. */

export interface WallCase {
  readonly materials: readonly Material[];
  /** Outside first. */
  readonly layers: readonly Layer[];
  readonly outside: LabFace;
  readonly inside: LabFace;
  readonly hours: number;
  readonly start_C: number;
  readonly startHumidity: number;
  readonly depths_m?: readonly number[];
  readonly physics?: NonNullable<Project["lab"]>["physics"];
  readonly tolerance?: number;
  readonly gridFineness?: number;
}

export function wallProject(wall: WallCase): Project {
  return {
    format: "wallyear",
    formatVersion: 1,
    name: "Property test",
    lab: {
      outside: wall.outside,
      inside: wall.inside,
      physics: wall.physics ?? {},
      duration_h: wall.hours,
      initialTemperature_C: wall.start_C,
    },
    run: {
      start: "10-01",
      years: 1,
      initial: { relativeHumidity: wall.startHumidity },
      ...(wall.tolerance === undefined ? {} : { tolerance: wall.tolerance }),
      ...(wall.gridFineness === undefined ? {} : { gridFineness: wall.gridFineness }),
    },
    options: [
      {
        id: "A",
        name: "A",
        paths: [
          {
            id: "wall",
            kind: "solid",
            layers: [...wall.layers],
            probes: (wall.depths_m ?? []).map((depth_m, k) => ({ id: `depth-${k}`, depth_m })),
          },
        ],
      },
    ],
    materials: [...wall.materials],
  };
}

/** A number of a thousand even steps: what a person would type, not the smallest double. */
export const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: 1000 }).map((k) => min + ((max - min) * k) / 1000);

/** Porous materials from fibre to stone: mostly open or tight, thirsty or not. */
export const porous = (id: string): fc.Arbitrary<Material> =>
  fc
    .record({
      conductivity: between(0.03, 2),
      density: between(20, 2400),
      capacity: between(800, 1800),
      mu: between(1.5, 150),
      saturation: between(20, 400),
      logScale: between(-8, -5),
      n: between(1.4, 2.5),
      absorption: fc.option(between(0.0005, 0.1)),
      perWater: between(0, 0.002),
    })
    .map(({ conductivity, density, capacity, mu, saturation, logScale, n, absorption, perWater }) => ({
      id,
      name: id,
      kind: "bulk" as const,
      density_kgm3: density,
      heatCapacity_JkgK: capacity,
      conductivity_WmK: { dry_WmK: conductivity, perWater },
      freeSaturation_kgm3: saturation,
      sorption: {
        saturation_kgm3: saturation,
        suctionTerms: [{ share: 1, scale_perPa: 10 ** logScale, n, m: 1 - 1 / n }],
      },
      vapour: { resistanceFactor: mu },
      ...(absorption === null ? {} : { liquid: { absorption_kgm2s05: absorption } }),
    }));

/** One to three layers of 5 to 200 mm. */
export const layered: fc.Arbitrary<{ materials: Material[]; layers: Layer[] }> = fc
  .integer({ min: 1, max: 3 })
  .chain((count) =>
    fc.tuple(
      ...Array.from({ length: count }, (_, k) =>
        fc.record({ material: porous(`porous-${k}`), thickness: between(0.005, 0.2) }),
      ),
    ),
  )
  .map((parts) => ({
    materials: parts.map(({ material }) => material),
    layers: parts.map(({ material, thickness }, k) => ({
      id: `layer-${k}`,
      material: material.id,
      thickness_m: thickness,
    })),
  }));

/** Hourly course of `hours` hours, straight lines between values. */
export const hourly = (hours: number, min: number, max: number) =>
  fc.array(between(min, max), { minLength: hours + 1, maxLength: hours + 1 }).map((values) => ({
    table: values.map((value, k): [number, number] => [k * 3600, value]),
    between: "line" as const,
  }));

/** A face in weather of its own: air that swings every hour, films, and rain if asked for. */
export const weatheredFace = (hours: number, rained: boolean): fc.Arbitrary<LabFace> =>
  fc
    .record({
      temperature_C: hourly(hours, -15, 35),
      relativeHumidity: hourly(hours, 0.25, 0.95),
      heatFilm: between(4, 25),
      vapourFilm: between(1e-9, 1e-7),
      absorbedRadiation_Wm2: hourly(hours, 0, 300),
      rain_kgm2s: rained ? hourly(hours, 0, 4e-4) : fc.constant(0),
    })
    .map(({ heatFilm, vapourFilm, ...face }) => ({ ...face, heatFilm_Wm2K: heatFilm, vapourFilm_kgm2sPa: vapourFilm }));

/** A face whose air follows a sine of a day, as weather roughly does; no sun, no rain. */
export const dailyFace = (hours: number): fc.Arbitrary<LabFace> =>
  fc
    .record({
      mean_C: between(-10, 25),
      swing_K: between(0, 12),
      meanHumidity: between(0.4, 0.8),
      swingHumidity: between(0, 0.15),
      phase: between(0, 1),
      heatFilm: between(4, 25),
      vapourFilm: between(1e-9, 1e-7),
    })
    .map(({ mean_C, swing_K, meanHumidity, swingHumidity, phase, heatFilm, vapourFilm }) => {
      const course = (mean: number, swing: number) => ({
        table: Array.from({ length: hours + 1 }, (_, k): [number, number] => [
          k * 3600,
          mean + swing * Math.sin(2 * Math.PI * (k / 24 + phase)),
        ]),
        between: "line" as const,
      });
      return {
        temperature_C: course(mean_C, swing_K),
        relativeHumidity: course(meanHumidity, -swingHumidity),
        heatFilm_Wm2K: heatFilm,
        vapourFilm_kgm2sPa: vapourFilm,
      };
    });

/** Every recorded number of a run, in order, for comparisons to the bit. */
export function everyNumber(result: RunResult): Float64Array {
  const parts: number[] = [];
  for (const probe of result.probes) parts.push(...probe.T_C, ...probe.RH, ...probe.w_kgm3);
  parts.push(...result.map.T_C, ...result.map.RH, ...result.map.w_kgm3);
  for (const book of [result.water, result.heat])
    parts.push(book.in, book.out, book.stored, book.closure, ...Object.values(book.byFaceAndSource));
  parts.push(...result.yearEndWater_kgm2, result.log.steps, result.log.rejected, result.log.iterations);
  return Float64Array.from(parts);
}

/** Layer means times thickness at the end of the run [kg/m2]. */
export function waterAtEnd_kgm2(result: RunResult, layers: readonly Layer[]): number {
  return layers.reduce((sum, layer) => {
    const mean = result.probes.find((probe) => probe.kind === "layerMean" && probe.layer === layer.id);
    if (!mean) throw new Error(`no mean of ${layer.id}`);
    return sum + mean.w_kgm3[result.hours - 1]! * (layer.thickness_m ?? 0);
  }, 0);
}
