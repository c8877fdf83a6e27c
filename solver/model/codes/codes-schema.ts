import { z } from "zod";
import { editions } from "./edition.ts";

const rOverStuds = z.record(
  z.string(),
  z.looseObject({ over2x4: z.number().nonnegative(), over2x6: z.number().nonnegative() }),
);
const byZone = z.record(z.string(), z.number().nonnegative());
/** Which code is read, and local amendments by zone ("6A", or "6" for all of zone 6). */
export const codesSchema = z.looseObject({
  edition: z.enum(editions).optional(),
  amendments: z
    .looseObject({
      class3: rOverStuds.optional(),
      withFoam: rOverStuds.optional(),
      /** Rows like "20+5". */
      wallR: z
        .record(
          z.string(),
          z
            .array(z.string().regex(/^\d+(\.\d+)?(\+\d+(\.\d+)?)?$/, 'write R like "20+5"'))
            .min(1)
            .max(10),
        )
        .optional(),
      wallU: byZone.optional(),
      ach50: byZone.optional(),
    })
    .optional(),
  canadianHeatingDegreeDays: z.number().nonnegative().max(20_000).optional(),
});
