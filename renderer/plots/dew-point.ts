import { dewPoint_C, vapourPressure_Pa } from "../../climate/index.ts";

/** Temperature at which air of this state would give up dew [degC]; humidity 0..1, floored where its logarithm ends. */
export const dewPointOf_C = (temperature_C: number, relativeHumidity: number): number =>
  dewPoint_C(vapourPressure_Pa(Math.max(relativeHumidity, 1e-4), temperature_C));
