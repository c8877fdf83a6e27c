import { hoursOfYear } from "../calendar.ts";
import { cloudFromClearness } from "../sun/cloud-from-clearness.ts";
import { splitGlobal } from "../sun/diffuse-split.ts";
import { solarConstant_Wm2 } from "../sun/face-irradiance.ts";
import { skyInfrared_Wm2 } from "../sun/sky-longwave.ts";
import { sunAtHour } from "../sun/sun-position.ts";
import { countMissing, placeInFile, warn, type Assembly } from "./assembly.ts";
import { fillGaps } from "./gaps.ts";
import { mendColumn } from "./mend-state.ts";

/** Cosine of the zenith angle in the middle of every hour, and the normal irradiance outside the atmosphere. */
export interface SunOfYear {
  readonly cosZenith: Float64Array;
  readonly outsideNormal_Wm2: Float64Array;
}

export function sunOfYear(place: Assembly["source"]["place"]): SunOfYear {
  const cosZenith = new Float64Array(hoursOfYear);
  const outsideNormal_Wm2 = new Float64Array(hoursOfYear);
  for (let k = 0; k < hoursOfYear; k++) {
    const sun = sunAtHour(place, k + 0.5);
    cosZenith[k] = sun.cosZenith;
    outsideNormal_Wm2[k] = solarConstant_Wm2 * sun.distanceFactor;
  }
  return { cosZenith, outsideNormal_Wm2 };
}

/**
 * The three sun columns. An hour that lacks one of them gets it from the other two; one with the global alone is split by Erbs.
 * Night hours may be empty. What is then still missing is a gap like any other.
 */
export function mendSun(assembly: Assembly, sun: SunOfYear): boolean {
  const {
    globalHorizontal_Wm2: global,
    directNormal_Wm2: direct,
    diffuseHorizontal_Wm2: diffuse,
  } = assembly.table.values;
  let split = 0;
  let night = 0;
  for (let k = 0; k < hoursOfYear; k++) {
    const cosZenith = Math.max(0, sun.cosZenith[k]!);
    const has =
      (Number.isNaN(global[k]!) ? 0 : 4) + (Number.isNaN(direct[k]!) ? 0 : 2) + (Number.isNaN(diffuse[k]!) ? 0 : 1);
    if (has === 7) continue;
    if (cosZenith <= 0 && sun.cosZenith[k]! < -0.15) {
      if (has === 0) night++;
      if (!(global[k]! >= 0)) global[k] = 0;
      if (!(direct[k]! >= 0)) direct[k] = 0;
      if (!(diffuse[k]! >= 0)) diffuse[k] = 0;
    } else if (has === 3) global[k] = direct[k]! * cosZenith + diffuse[k]!;
    else if (has === 6) diffuse[k] = Math.min(global[k]!, Math.max(0, global[k]! - direct[k]! * cosZenith));
    else if (has === 5) direct[k] = cosZenith > 0.02 ? Math.max(0, (global[k]! - diffuse[k]!) / cosZenith) : 0;
    else if (has === 4) {
      const parts = splitGlobal(global[k]!, cosZenith, sun.outsideNormal_Wm2[k]!);
      direct[k] = Math.min(parts.directNormal_Wm2, sun.outsideNormal_Wm2[k]!);
      diffuse[k] = parts.diffuse_Wm2;
      split++;
    }
  }
  if (night > 0 && countMissing(global) < hoursOfYear - night)
    warn(
      assembly,
      placeInFile(assembly, "globalHorizontal_Wm2"),
      `Sun was missing in ${night} night hours and is none there.`,
      "Nothing to do.",
    );
  if (split > 0)
    warn(
      assembly,
      placeInFile(assembly, "diffuseHorizontal_Wm2"),
      `Direct and diffuse sun were missing in ${split} hours; the global sun was split by the hour's clearness (Erbs 1982).`,
      "Nothing to do; measured parts would be better for a south wall.",
    );
  if (
    assembly.missingHours.globalHorizontal_Wm2 === hoursOfYear &&
    assembly.missingHours.directNormal_Wm2 === hoursOfYear
  )
    global.fill(NaN);
  const globalWhole = mendColumn(assembly, "globalHorizontal_Wm2");
  if (!globalWhole) return false;
  return mendColumn(assembly, "directNormal_Wm2") && mendColumn(assembly, "diffuseHorizontal_Wm2");
}

/** Opaque cloud, from the day's clearness where it is missing for long. Only the infrared needs it. */
export function mendCloud(assembly: Assembly, sun: SunOfYear): void {
  const cloud = assembly.table.values.cloudCover;
  const { open } = fillGaps(cloud);
  if (open.length === 0) return;
  const daily = dailyCloud(assembly.table.values.globalHorizontal_Wm2, sun);
  for (const gap of open)
    for (let step = 0; step < gap.length; step++) {
      const k = (gap.first + step) % hoursOfYear;
      cloud[k] = daily[Math.floor(k / 24)]!;
    }
  warn(
    assembly,
    placeInFile(assembly, "cloudCover"),
    `Cloud was missing in ${assembly.missingHours.cloudCover ?? 0} hours and was estimated from each day's clearness.`,
    "Nothing to do; it only serves the night sky's infrared.",
  );
}

/** Cloud of each day; polar night days take the last day that had sun. */
function dailyCloud(global: Float64Array, sun: SunOfYear): Float64Array {
  const cloud = new Float64Array(365);
  let last = 0.6;
  for (let day = 0; day < 365; day++) {
    let received = 0;
    let outside = 0;
    for (let k = day * 24; k < day * 24 + 24; k++) {
      received += global[k]!;
      outside += Math.max(0, sun.cosZenith[k]!) * sun.outsideNormal_Wm2[k]!;
    }
    if (outside > 200 && Number.isFinite(received)) last = cloudFromClearness(received / outside);
    cloud[day] = last;
  }
  return cloud;
}

/** Infrared of the sky, by the cloud formula where the file lacks it: producers computed the field by the same formula. */
export function mendInfrared(assembly: Assembly): void {
  const { skyInfrared_Wm2: infrared, temperature_C, dewPoint_C, cloudCover } = assembly.table.values;
  let mended = 0;
  for (let k = 0; k < hoursOfYear; k++)
    if (Number.isNaN(infrared[k]!)) {
      infrared[k] = skyInfrared_Wm2(temperature_C[k]!, dewPoint_C[k]!, cloudCover[k]!);
      mended++;
    }
  if (mended > 0)
    warn(
      assembly,
      placeInFile(assembly, "skyInfrared_Wm2"),
      `Horizontal infrared was missing in ${mended} hours; it was computed from dry-bulb, dew point and cloud (Clark and Allen 1978, Walton 1983).`,
      "Nothing to do: the field is not measured in typical-year files either.",
    );
}
