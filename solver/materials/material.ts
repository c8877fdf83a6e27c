import { z } from "zod";

/** How a figure is known. SEEN: read in the named source. MEMORY: recalled, to be checked before it is relied on. */
export const flags = ["SEEN", "SEEN-RANGE", "COMPUTED", "MIXED", "MEMORY", "ASSUMED", "USER"] as const;
export type Flag = (typeof flags)[number];

const finite = z.number();
const positive = finite.positive();
/** Points of a curve, first number rising. */
const points = z
  .array(z.tuple([finite, finite]))
  .min(1)
  .max(500);

/** One pore class: share (1 + (scale s)^n)^-m of the saturation content at suction s [Pa]. */
const suctionTerm = z.strictObject({ share: positive, scale_perPa: positive, n: positive, m: positive });

export const sorptionSchema = z.union([
  /** [relative humidity 0..1, moisture content kg/m3] */
  z.strictObject({ relativeHumidity: points }),
  /** [suction Pa, moisture content kg/m3] */
  z.strictObject({ suction_Pa: points }),
  z.strictObject({ saturation_kgm3: positive, suctionTerms: z.array(suctionTerm).min(1).max(6) }),
  /** Straight line through the origin, `slope` kg/m3 per unit of relative humidity. */
  z.strictObject({ slope_kgm3: positive }),
]);

export const vapourSchema = z.union([
  /** Vapour resistance factor mu; one number, or [relative humidity, mu] read ln(mu)-linear. `fillsWithWater` closes the pores: r/(0.503 r^2 + 0.497), r = 1 - w/w_sat. */
  z.strictObject({ resistanceFactor: z.union([positive, points]), fillsWithWater_kgm3: positive.optional() }),
  /** Permeability [kg/(m s Pa)], independent of temperature; one number or [relative humidity, permeability]. */
  z.strictObject({ permeability_kgmsPa: z.union([z.number().nonnegative(), points]) }),
]);

export const liquidSchema = z.union([
  /** Water absorption coefficient A [kg/(m2 s^0.5)]; with freeSaturation it gives D = 3.8 (A/w_f)^2 1000^(w/w_f - 1) (Künzel 1995). */
  z.strictObject({ absorption_kgm2s05: z.number().nonnegative() }),
  /** Liquid diffusivity D_w [m2/s]: one number, or [moisture content, D]. */
  z.strictObject({ diffusivity_m2s: z.union([positive, points]) }),
  /** Liquid conductivity K [s] for g = K ds/dx: points of [suction Pa, K] or [moisture content kg/m3, K], read ln-ln or ln-linear. */
  z.strictObject({
    conductivity_s: z.union([z.strictObject({ suction_Pa: points }), z.strictObject({ moistureContent: points })]),
  }),
  /** ln K = sum of coefficients[i] z^i, z = (w - origin)/scale; w in kg/m3, K in s. */
  z.strictObject({
    lnConductivity: z.strictObject({
      coefficients: z.array(finite).min(1).max(12),
      origin_kgm3: finite,
      scale_kgm3: positive,
    }),
  }),
  /** K = saturated (1 + (scale s)^n)^-m. */
  z.strictObject({
    saturatedConductivity_s: positive,
    suctionTerm: z.strictObject({ scale_perPa: positive, n: positive, m: positive }),
  }),
]);

export const conductivitySchema = z.union([
  positive,
  z.strictObject({
    dry_WmK: positive,
    /** Added per kg/m3 of water [W/(m K) per kg/m3], up to `perWaterUpTo_kgm3` if given. */
    perWater: finite.optional(),
    perWaterUpTo_kgm3: positive.optional(),
    /** Factor exp(expPsi w/1000). */
    expPsi: finite.optional(),
    /** [moisture content kg/m3, factor on the dry value]. */
    moistureFactor: points.optional(),
    /** [temperature degC, conductivity of the dry material]; replaces dry_WmK's temperature behaviour. */
    temperature_C: points.optional(),
    /** Relative change per K about `reference_C` (24 by default). */
    perKelvin: finite.optional(),
    reference_C: finite.optional(),
  }),
]);

/**
 * A material as the solver needs it: plain data in SI, no figure without a meaning. Catalogue rows add a passport to it.
 * bulk: meshed layer · membrane: a resistance without thickness · air: still or ventilated air space.
 */
export const materialSchema = z.looseObject({
  id: z
    .string()
    .min(1)
    .max(80)
    .regex(/^[a-z0-9][a-z0-9_-]*$/, "use lower-case letters, digits, - and _"),
  name: z.string().min(1).max(200),
  kind: z.enum(["bulk", "membrane", "air"]),
  group: z.string().max(80).optional(),
  density_kgm3: positive.max(25000).optional(),
  heatCapacity_JkgK: positive.max(20000).optional(),
  conductivity_WmK: conductivitySchema.optional(),
  porosity: z.number().min(0).max(1).optional(),
  freeSaturation_kgm3: positive.optional(),
  sorption: sorptionSchema.optional(),
  vapour: vapourSchema.optional(),
  liquid: liquidSchema.optional(),
  /** Membranes: permeance [kg/(m2 s Pa)], one number or [relative humidity, permeance] read ln-linear at the mean of both faces. */
  permeance_kgm2sPa: z.union([z.number().nonnegative(), points]).optional(),
  /** Membranes and air spaces: thermal resistance [m2 K/W]. */
  thermalResistance_m2KW: z.number().nonnegative().optional(),
  /** Wood and wood panels: moisture content in % by mass is meaningful. */
  wood: z.boolean().optional(),
});
export type Material = z.infer<typeof materialSchema>;
export type Sorption = z.infer<typeof sorptionSchema>;
export type Vapour = z.infer<typeof vapourSchema>;
export type Liquid = z.infer<typeof liquidSchema>;
export type Conductivity = z.infer<typeof conductivitySchema>;
