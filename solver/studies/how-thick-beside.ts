import type { Case, CaseLayer } from "../model/index.ts";
import { ratedConductivity_WmK } from "./material-figures.ts";
import { withoutLayer } from "./change-case.ts";
import { amount, phrase, type Phrase } from "./phrase.ts";
import { humidityAtDewPoint, outsideResistanceAtDewPoint_m2KW, planeResistances, steadyFace_C } from "./ratio-rule.ts";

/** The row of a prescriptive table that applies: least continuous insulation for a Class III retarder. */
export interface CodeRow {
  readonly edition: string;
  /** "Table R702.7(3), zone 6, over 2x6". */
  readonly row: string;
  readonly least_m2KW: number;
  readonly source: string;
}

/** The winter at the site and in the room, steady: means of the three coldest months. */
export interface Winter {
  readonly outdoor_C: number;
  readonly room_C: number;
  /** 0..1 */
  readonly roomHumidity: number;
}

/** The other two answers, and why they are not the run's. */
export interface Beside {
  readonly code: {
    readonly row: CodeRow;
    readonly thickness_m: number;
    /** Room humidity whose dew point the row just meets in this winter, 0..1. */ readonly presumesHumidity:
      number | null;
  } | null;
  readonly ratioRule: { readonly thickness_m: number; readonly faceWithout_C: number; readonly winter: Winter } | null;
  readonly why: readonly Phrase[];
}

/** Answers closer than this are called the same [m], a quarter of an inch. */
const same_m = 0.0254 / 4;

/** Code table and dew-point rule beside the run's answer, with the reasons for the difference worked in numbers. */
export function besideTheRun(
  base: Case,
  layer: CaseLayer,
  needed_m: number | null,
  row: CodeRow | null,
  winter: Winter | null,
): Beside {
  const conductivity = ratedConductivity_WmK(layer.material);
  if (conductivity === null) return { code: null, ratioRule: null, why: [] };
  const bare = planeResistances(withoutLayer(base, layer.id));
  const code =
    row === null
      ? null
      : {
          row,
          thickness_m: row.least_m2KW * conductivity,
          presumesHumidity:
            winter === null
              ? null
              : humidityAtDewPoint(winter.outdoor_C, winter.room_C, {
                  ...bare,
                  outside_m2KW: bare.outside_m2KW + row.least_m2KW,
                }),
        };
  const ratioRule =
    winter === null
      ? null
      : {
          thickness_m:
            Math.max(
              0,
              outsideResistanceAtDewPoint_m2KW(winter.outdoor_C, winter.room_C, winter.roomHumidity, bare.inside_m2KW) -
                bare.outside_m2KW,
            ) * conductivity,
          faceWithout_C: steadyFace_C(winter.outdoor_C, winter.room_C, bare),
          winter,
        };
  return { code, ratioRule, why: reasons(needed_m, code, ratioRule) };
}

function reasons(needed_m: number | null, code: Beside["code"], rule: Beside["ratioRule"]): readonly Phrase[] {
  const why: Phrase[] = [];
  if (code !== null && code.presumesHumidity !== null && rule !== null) {
    const presumes = code.presumesHumidity;
    const room = rule.winter.roomHumidity;
    why.push(
      phrase`The row serves a whole zone. In this winter of ${amount("temperature", rule.winter.outdoor_C)} it keeps the face at the dew point of a room at ${amount("humidity", presumes)}; this room is at ${amount("humidity", room)}.`,
    );
    if (room > presumes + 0.02)
      why.push(phrase`The room is outside the assumption of the table: it is more humid than the row presumes.`);
  }
  if (rule !== null)
    why.push(
      phrase`The dew-point rule by hand is a steady winter mean: no storage, no drying, no sun, no leaking air.`,
    );
  if (needed_m !== null && rule !== null) {
    const difference = needed_m - rule.thickness_m;
    if (Math.abs(difference) <= same_m)
      why.push(phrase`Run and hand rule agree within ${amount("thickness", same_m)}.`);
    else if (difference > 0)
      why.push(
        phrase`The run asks for more than the hand rule: a finding is broken before the face reaches the dew point, for growth and uptake begin below saturation.`,
      );
    else
      why.push(
        phrase`The run asks for less than the hand rule: the wood takes up the winter's vapour and gives it back in spring before a limit is reached.`,
      );
  }
  if (needed_m === null)
    why.push(phrase`The run has no thickness to compare: a finding stays broken over the whole range.`);
  return why;
}
