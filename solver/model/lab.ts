import { z } from "zod";

const positive = z.number().positive();

/** Most rows of a table: a year of minutes and some. */
export const mostRows = 600_000;

function isTable(value: unknown): boolean {
  if (!Array.isArray(value) || value.length < 1 || value.length > mostRows) return false;
  for (const row of value as unknown[]) {
    if (!Array.isArray(row) || row.length !== 2 || !Number.isFinite(row[0]) || !Number.isFinite(row[1])) return false;
  }
  return true;
}
/**
 * [time s, value], time rising; read as straight lines, or as steps that hold until the next row. A check of its own, since
 * a schema of pairs takes seconds for half a million rows.
 */
const table = z.custom<[number, number][]>(isTable);
/** A number that stays, or a table over time. */
export const courseSchema = z.union([
  z.number(),
  z.looseObject({ table, between: z.enum(["line", "step"]).default("line") }),
]);

/** A laboratory face: the air and films, or with zero resistance the state of the face itself. */
export const labFaceSchema = z.looseObject({
  temperature_C: courseSchema,
  /** One of the three, 0..1, Pa, or the suction at the face [Pa] (contact with liquid water: 0). */
  relativeHumidity: courseSchema.optional(),
  vapourPressure_Pa: courseSchema.optional(),
  suction_Pa: courseSchema.optional(),
  /** Heat film [W/(m2 K)]; 0 for an adiabatic face; "held" for a face held at temperature_C. */
  heatFilm_Wm2K: z.union([courseSchema, z.literal("held")]),
  /** Vapour film [kg/(m2 s Pa)]; 0 for a vapour-tight face; "held" for a face held at the given humidity. */
  vapourFilm_kgm2sPa: z.union([courseSchema, z.literal("held")]),
  absorbedRadiation_Wm2: courseSchema.optional(),
  /** Liquid water that arrives [kg/(m2 s)]. */
  rain_kgm2s: courseSchema.optional(),
  airPressure_Pa: courseSchema.optional(),
});

export const labPhysicsSchema = z.looseObject({
  /** "hyland-wexler": over water; "iso13788": 610.5 exp(17.269 t/(237.3+t)); "log": exp(65.8094 - 7066.27/T - 5.976 ln T). */
  saturationPressure: z.enum(["hyland-wexler", "iso13788", "log"]).optional(),
  /** Still-air permeability: "schirmer", or { form: "overT", coefficient }: coefficient/(R_v T), or one number [kg/(m s Pa)]. */
  airPermeability: z.union([z.literal("schirmer"), z.looseObject({ coefficient_m2s: positive }), positive]).optional(),
  waterDensity_kgm3: positive.optional(),
  gasConstantVapour_JkgK: positive.optional(),
  latentHeat_Jkg: z.number().nonnegative().optional(),
  waterHeatCapacity_JkgK: z.number().nonnegative().optional(),
  airVolumetricHeatCapacity_Jm3K: positive.optional(),
  /** False: moving liquid and vapour carry latent heat only. */
  sensibleHeatOfMovingWater: z.boolean().optional(),
  /** False: the wall stays at its initial temperature field (isothermal cases). */
  heat: z.boolean().optional(),
  /** False: no moisture moves (pure conduction). */
  moisture: z.boolean().optional(),
  /** Air volume flow through the wall, positive inward [m3/(m2 s)]. */
  airVelocity_ms: courseSchema.optional(),
});

export const labSchema = z.looseObject({
  outside: labFaceSchema,
  inside: labFaceSchema,
  physics: labPhysicsSchema.optional(),
  /** How long the run lasts [h]; hours are recorded. */
  duration_h: positive.max(200_000),
  /** Extra instants [h] at which profiles are recorded to the second, besides every hour. */
  initialTemperature_C: z.union([
    z.number(),
    z
      .array(z.tuple([z.number(), z.number()]))
      .min(1)
      .max(2000),
  ]),
});

export type Lab = z.infer<typeof labSchema>;
export type LabFace = z.infer<typeof labFaceSchema>;
export type LabPhysics = z.infer<typeof labPhysicsSchema>;
export type Course = z.infer<typeof courseSchema>;
