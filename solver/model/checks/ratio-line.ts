import { dewPointIso13788_C, saturationPressureIso13788_Pa } from "../../../climate/index.ts";
import { zoneOf } from "../codes/edition.ts";
import { checkLine, type CheckLine, type CodeSettings } from "./check-line.ts";
import type { WallFacts } from "./wall-facts.ts";

/** The usual room of the rule. Common practice, no source. */
const usualRoom_C = 21;
const usualHumidity = 0.35;

/** Up to this zone the sheathing is seldom below the dew point of the room, and the rule says nothing. */
const warmZone = 3;

/** Dew point of room air [degC], ISO 13788 form. @param relativeHumidity above 0, to 1 */
export const roomDewPoint_C = (indoor_C: number, relativeHumidity: number): number =>
  dewPointIso13788_C(relativeHumidity * saturationPressureIso13788_Pa(indoor_C));

/** Least share of the insulation that must lie outside of the condensing plane, 0 where none need be: (T_dew - T_out)/(T_in - T_out). */
export function leastOutsideShare(indoor_C: number, dewPoint_C: number, outdoorMean_C: number): number {
  return outdoorMean_C >= indoor_C ? 0 : Math.max(0, (dewPoint_C - outdoorMean_C) / (indoor_C - outdoorMean_C));
}

/** Outdoor mean that a share outside just survives: the plane sits at the room's dew point [degC]; -Infinity for a share of 1. */
export function breakEvenOutdoor_C(indoor_C: number, dewPoint_C: number, share: number): number {
  return share >= 1 ? -Infinity : (dewPoint_C - share * indoor_C) / (1 - share);
}

/** The first look at foam thickness, with its worked number; insulation only, nominal R. */
export function ratioLine(facts: WallFacts, settings: CodeSettings, projectZone?: string): CheckLine[] {
  const total = facts.ci_R + facts.cavity_R;
  const zone = zoneOf(settings.zone ?? projectZone ?? "");
  if (!facts.framed || total <= 0 || (zone && zone.number <= warmZone)) return [];
  const indoor = settings.winter?.indoor_C ?? usualRoom_C;
  const humidity = settings.winter?.relativeHumidity ?? usualHumidity;
  const dew = roomDewPoint_C(indoor, humidity);
  const share = facts.ci_R / total;
  const breakEven = breakEvenOutdoor_C(indoor, dew, share);
  const amount =
    facts.ci_R === 0
      ? "No insulation lies outside of the sheathing"
      : `R-${facts.ci_R.toFixed(1)} of R-${total.toFixed(1)} lies outside, ${(100 * share).toFixed(0)} %`;
  const worked = `${amount}. In a room of ${indoor} degC and ${(100 * humidity).toFixed(0)} % RH (dew point ${dew.toFixed(1)} degC) that keeps the inner face of the sheathing at the dew point down to an outdoor mean of ${breakEven.toFixed(1)} degC`;
  const caveat = "The rule counts insulation alone; it ignores storage, drying, sun and air leakage.";
  const base = {
    id: "ratio",
    subject: "moisture",
    path: facts.path.id,
    unit: "-",
    measured: share,
    source: "Steady state, insulation only; common practice, no source",
    flag: "COMPUTED",
  } as const;
  const outdoor = settings.winter?.outdoorMean_C;
  if (outdoor === undefined)
    return [
      checkLine({
        ...base,
        verdict: "unknown",
        holds: null,
        statement: `Ratio: ${worked}. ${caveat}`,
        remedy: "Give the mean of the coldest three months to judge it.",
      }),
    ];
  const least = leastOutsideShare(indoor, dew, outdoor);
  const holds = share >= least;
  const needed = least >= 1 ? Infinity : (facts.cavity_R * least) / (1 - least);
  return [
    checkLine({
      ...base,
      verdict: holds ? "holds" : "caution",
      holds,
      limit: least,
      statement: `Ratio: ${worked}; the coldest three months average ${outdoor.toFixed(1)} degC and ask ${(100 * least).toFixed(0)} %. ${caveat}`,
      remedy: holds ? null : `R-${needed.toFixed(1)} outside would do by this rule; or hold the room drier.`,
    }),
  ];
}
