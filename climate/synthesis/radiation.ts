import { daysInMonth, firstDayOfMonth } from "../calendar.ts";
import { splitGlobal } from "../sun/diffuse-split.ts";
import type { DailyClearness } from "./clearness.ts";
import type { Random } from "./random.ts";
import type { SkyOfYear } from "./spencer-sun.ts";

/** Standard deviation of the hourly clearness within a day (COMPUTED 0.09 to 0.10). */
const withinDay = 0.09;
/** No hour gets more than this share of what arrives outside the atmosphere. */
const mostOfAnHour = 0.85;

export interface HourlySun {
  readonly global_Wm2: Float64Array;
  readonly directNormal_Wm2: Float64Array;
  readonly diffuse_Wm2: Float64Array;
}

/**
 * Hourly sun from daily clearness. Day profile: Collares-Pereira and Rabl 1979; scattered hour by hour; split by Erbs 1982.
 */
export function hourlySun(
  global_kWhm2day: readonly number[],
  clearness: DailyClearness,
  sky: SkyOfYear,
  random: Random,
): HourlySun {
  const global_Wm2 = new Float64Array(8760);
  for (let day = 0; day < 365; day++) {
    const k = clearness.daily[day]!;
    const sunset = sky.sunset[day]!;
    const a = 0.409 + 0.5016 * Math.sin(sunset - Math.PI / 3);
    const b = 0.6609 - 0.4767 * Math.sin(sunset - Math.PI / 3);
    const shares = new Float64Array(24);
    for (let h = 0; h < 24; h++) {
      const scatter = k > 0 ? Math.min(1.9, Math.max(0.15, 1 + (withinDay / k) * random.normal())) : 1;
      const angle = ((h + 0.5 + sky.solarShift_h[day]! - 12) * Math.PI) / 12;
      shares[h] = Math.max(0, a + b * Math.cos(angle)) * sky.cosZenith[day * 24 + h]! * scatter;
    }
    fillDay(global_Wm2, shares, day * 24, k * clearness.outside_Whm2[day]!, sky);
  }
  keepMonths(global_Wm2, global_kWhm2day, sky);
  const directNormal_Wm2 = new Float64Array(8760);
  const diffuse_Wm2 = new Float64Array(8760);
  for (let k = 0; k < 8760; k++) {
    const parts = splitGlobal(global_Wm2[k]!, sky.cosZenith[k]!, sky.outsideNormal_Wm2[k]!);
    directNormal_Wm2[k] = parts.directNormal_Wm2;
    diffuse_Wm2[k] = parts.diffuse_Wm2;
  }
  return { global_Wm2, directNormal_Wm2, diffuse_Wm2 };
}

/** Shares the day's sum over its hours; what the hourly limit cuts off goes to the other hours. */
function fillDay(
  global_Wm2: Float64Array,
  shares: Float64Array,
  from: number,
  wanted_Whm2: number,
  sky: SkyOfYear,
): void {
  for (let round = 0, have = 0; round < 6 && wanted_Whm2 > 0; round++) {
    let open = 0;
    for (let h = 0; h < 24; h++)
      if (global_Wm2[from + h]! < mostOfAnHour * sky.outside_Wm2[from + h]!) open += shares[h]!;
    if (open <= 0) return;
    const rest = wanted_Whm2 - have;
    have = 0;
    for (let h = 0; h < 24; h++) {
      const limit = mostOfAnHour * sky.outside_Wm2[from + h]!;
      if (global_Wm2[from + h]! < limit)
        global_Wm2[from + h] = Math.min(limit, global_Wm2[from + h]! + (rest * shares[h]!) / open);
      have += global_Wm2[from + h]!;
    }
    if (wanted_Whm2 - have < 1e-6 * wanted_Whm2) return;
  }
}

/** Brings each month to its sum within the hourly limit. */
function keepMonths(global_Wm2: Float64Array, global_kWhm2day: readonly number[], sky: SkyOfYear): void {
  daysInMonth.forEach((days, month) => {
    const from = firstDayOfMonth[month]! * 24;
    const wanted = global_kWhm2day[month]! * 1000 * days;
    for (let round = 0; round < 8; round++) {
      let sum = 0;
      for (let k = from; k < from + days * 24; k++) sum += global_Wm2[k]!;
      if (sum <= 0) return;
      for (let k = from; k < from + days * 24; k++)
        global_Wm2[k] = Math.min(mostOfAnHour * sky.outside_Wm2[k]!, (global_Wm2[k]! * wanted) / sum);
    }
  });
}
