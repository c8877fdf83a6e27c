import { z } from "zod";
import { materialSchema } from "../materials/material.ts";
import { codesSchema } from "./codes/codes-schema.ts";
import { labSchema } from "./lab.ts";

export * from "./lab.ts";

/**
 * The project file, formatVersion 1. SI, JSON. Every type of a project is derived from this schema.
 * Objects are loose: a field that this version does not know is kept and written back.
 */
export const formatVersion = 1;

const id = z
  .string()
  .min(1)
  .max(80)
  .regex(/^[A-Za-z0-9][A-Za-z0-9_-]*$/, "use letters, digits, - and _");
const text = z.string().max(20_000);
const share = z.number().min(0).max(1);
const positive = z.number().positive();

export const layerSchema = z.looseObject({
  id,
  /** A catalogue id, the id of a material in `materials`, or a material written out here. */
  material: z.union([z.string().min(1).max(80), materialSchema]),
  /** Absent for a membrane or coating. */
  thickness_m: z.number().optional(),
  roles: z.array(z.enum(["water", "air", "vapour", "thermal"])).optional(),
  /** Resistance of the joint to the next layer inward. */
  contact: z
    .looseObject({
      thermal_m2KW: z.number().nonnegative().optional(),
      vapour_m2sPakg: z.number().nonnegative().optional(),
      liquid: z.boolean().optional(),
    })
    .optional(),
  /** Air spaces: air changes per hour with outdoor air; "driven" lets wind and stack set it. */
  ventilation: z
    .looseObject({ airChangesPerHour: z.union([z.number().nonnegative(), z.literal("driven")]) })
    .optional(),
  /** Start state of this layer; else that of the run. Moisture content in % by mass or kg/m3. */
  initial: z
    .union([
      z.looseObject({ relativeHumidity: share }),
      z.looseObject({ moistureContent_percent: z.number().nonnegative() }),
      z.looseObject({ water_kgm3: z.number().nonnegative() }),
    ])
    .optional(),
});

/** Indoor air that reaches a plane of the wall through a joint, and outdoor air in the other direction. */
export const leakSchema = z.looseObject({
  id: id.optional(),
  /** Where it arrives: the inner ("inside") or outer face of this layer. */
  to: id,
  at: z.enum(["inside", "outside"]).default("outside"),
  /** A fixed flow [m3/(h m2)] while air leaks outward, or "driven": from air tightness, stack, fan and wind, hour by hour. */
  flow_m3hm2: z.union([z.number().nonnegative(), z.literal("driven")]),
  /** Share of the envelope's mean leakage that takes this path, for "driven" [-]. */
  shareOfEnvelope: z.number().nonnegative().max(100).optional(),
});

export const pathSchema = z.looseObject({
  id,
  kind: z.enum(["studBay", "stud", "plate", "header", "rimJoist", "ledger", "balcony", "windowBuck", "solid", "other"]),
  name: z.string().max(200).optional(),
  areaShare: share.optional(),
  layers: z.array(layerSchema).min(1).max(60),
  leaks: z.array(leakSchema).max(20).optional(),
  probes: z
    .array(
      z.looseObject({ id: id.optional(), depth_m: z.number().nonnegative(), label: z.string().max(200).optional() }),
    )
    .max(200)
    .optional(),
  /**
   * Joints to neighbour paths: which paths this one touches ("to"; the field of the wall when absent), and for each control role
   * whether its layer is joined to the neighbour's (true) or not (false). What is left out is deduced from the layers.
   */
  tieIns: z
    .looseObject({
      to: z.array(id).max(20).optional(),
      water: z.boolean().optional(),
      air: z.boolean().optional(),
      vapour: z.boolean().optional(),
      thermal: z.boolean().optional(),
    })
    .optional(),
});

export const optionSchema = z.looseObject({
  id: z.string().regex(/^[A-Z]$/, "name options A, B, C ..."),
  name: z.string().max(200),
  notes: text.optional(),
  /** The user's own figures, for Side by Side. */
  price_perM2: z.number().nonnegative().optional(),
  carbon_kgCO2ePerM2: z.number().optional(),
  /** Metal fasteners through the outer insulation, for the whole-wall U. */
  fasteners: z
    .looseObject({
      perM2: z.number().nonnegative().max(100),
      diameter_m: positive.max(0.05),
      /** Shank: carbon steel 50, stainless 17. */
      conductivity_WmK: positive.max(500),
      /** Depth reached into the insulation; the whole of it when absent. */
      length_m: positive.max(1).optional(),
    })
    .optional(),
  paths: z.array(pathSchema).min(1).max(20),
});

export const faceSchema = z.looseObject({
  /** Clockwise from north: N 0, E 90, S 180, W 270. */
  azimuth_deg: z.number().min(0).max(360),
  tilt_deg: z.number().min(0).max(180).default(90),
  height_m: positive.max(500).optional(),
  shelter: z.enum(["sheltered", "medium", "severe"]).optional(),
  solarAbsorptance: share.default(0.6),
  longwaveEmissivity: share.default(0.9),
  groundReflectance: share.optional(),
  /** True: earth lies against this wall. Such walls are outside the scope of the program and are refused in words. */
  belowGrade: z.boolean().optional(),
  overhang: z.looseObject({ depth_m: z.number().nonnegative(), heightAbove_m: z.number().nonnegative() }).optional(),
});

export const siteSchema = z.looseObject({
  weather: z.union([
    z.looseObject({
      city: z.string().min(1).max(80),
      year: z.enum(["typical", "cold", "wet"]).optional(),
      seed: z.number().int().nonnegative().optional(),
    }),
    z.looseObject({ file: z.string().min(1).max(1000), monthlyRainFrom: z.string().max(80).optional() }),
  ]),
  climateZone: z
    .string()
    .regex(/^[0-8][ABC]?$/, "0 to 8 with A, B or C")
    .optional(),
  face: faceSchema,
  rain: z
    .looseObject({
      exposureFactor: z.number().nonnegative().optional(),
      depositionFactor: z.number().nonnegative().optional(),
      leakShare: share.optional(),
      leakTo: id.optional(),
      method: z.enum(["ashrae160", "iso15927"]).optional(),
    })
    .optional(),
});

const vapourFixed = z.union([z.number().min(0).max(1), z.array(z.number().min(0).max(1)).length(12)]);
const temperatureFixed = z.union([z.number(), z.array(z.number()).length(12)]);
export const indoorSchema = z.union([
  z.looseObject({ method: z.literal("fixed"), temperature_C: temperatureFixed, relativeHumidity: vapourFixed }),
  z.looseObject({
    method: z.literal("ashrae160"),
    variant: z.enum(["simplified", "intermediate"]).default("simplified"),
    cooled: z.boolean().optional(),
    bedrooms: z.number().int().positive().optional(),
    volume_m3: positive.optional(),
    airChangesPerHour: positive.optional(),
  }),
  z.looseObject({ method: z.literal("en15026"), load: z.enum(["normal", "high"]).default("normal") }),
  z.looseObject({
    method: z.literal("iso13788"),
    humidityClass: z.number().int().min(1).max(5),
    temperature_C: z.number().default(20),
  }),
  /** Relative humidity in winter `winterRelativeHumidity`, rising with outdoor temperature to `summerRelativeHumidity`. */
  z.looseObject({
    method: z.literal("seasonal"),
    winterTemperature_C: z.number(),
    summerTemperature_C: z.number(),
    winterRelativeHumidity: share,
    summerRelativeHumidity: share,
  }),
  z.looseObject({ method: z.literal("logger"), file: z.string().min(1).max(1000) }),
]);

export const airSchema = z.looseObject({
  /** Blower-door result [1/h at 50 Pa]. */
  ach50: z.number().nonnegative().max(100),
  volume_m3: positive.optional(),
  envelopeArea_m2: positive.optional(),
  storeys: z.number().int().positive().max(200).optional(),
  height_m: positive.optional(),
  /** Pressure of fans, positive: the house is pushed outward [Pa]. */
  fanPressure_Pa: z.number().optional(),
});

export const runSchema = z.looseObject({
  start: z
    .string()
    .regex(/^\d\d-\d\d$/, 'month and day, like "10-01"')
    .default("10-01"),
  years: z.number().int().min(1).max(30).default(3),
  /** Repeat the year until its end state repeats, `years` at most. */
  untilItRepeats: z.boolean().optional(),
  initial: z
    .union([z.enum(["dry", "delivered", "rainedOn"]), z.looseObject({ relativeHumidity: share })])
    .default("delivered"),
  initialTemperature_C: z.number().optional(),
  /** Relative local error allowed in a time step; the default is right for design. */
  tolerance: positive.max(0.1).optional(),
  /** 1 is the default grid, 2 is twice as fine. */
  gridFineness: positive.max(16).optional(),
});

export const projectSchema = z.looseObject({
  format: z.literal("wallyear"),
  formatVersion: z.literal(formatVersion),
  name: z.string().max(200),
  notes: text.optional(),
  site: siteSchema.optional(),
  lab: labSchema.optional(),
  indoor: indoorSchema.optional(),
  air: airSchema.optional(),
  run: runSchema.default({ start: "10-01", years: 3, initial: "delivered" }),
  codes: codesSchema.optional(),
  options: z.array(optionSchema).min(1).max(8),
  materials: z.array(materialSchema).max(500).optional(),
});

export type Project = z.infer<typeof projectSchema>;
export type Option = z.infer<typeof optionSchema>;
export type Path = z.infer<typeof pathSchema>;
export type Layer = z.infer<typeof layerSchema>;
export type Leak = z.infer<typeof leakSchema>;
export type Face = z.infer<typeof faceSchema>;
export type Site = z.infer<typeof siteSchema>;
export type Indoor = z.infer<typeof indoorSchema>;
export type Air = z.infer<typeof airSchema>;
export type RunSettings = z.infer<typeof runSchema>;
export type ControlRole = "water" | "air" | "vapour" | "thermal";
export type PathKind = Path["kind"];
