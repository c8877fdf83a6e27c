import type { Case, CaseLayer } from "../../solver/index.ts";
import { dayNameLong, type TimeScale } from "../plots/calendar.ts";
import { lowerFirst } from "../plots/wall-depths.ts";
import { difference, highest, lowest } from "../plots/series.ts";
import type { Units } from "../state/index.ts";
import { lengthText } from "../units/index.ts";

/** "B is drier all year, by 5.5 points on 3 January": what the difference strip shows. */
export function differenceWords(
  a: ArrayLike<number>,
  b: ArrayLike<number>,
  names: readonly [string, string],
  time: TimeScale,
  unit: "points" | "% RH",
): string {
  const change = difference(a, b);
  if (change.length === 0) return "";
  const low = lowest(change)!;
  const high = highest(change)!;
  const [, name] = names;
  const most = Math.abs(low.value) >= Math.abs(high.value) ? low : high;
  if (Math.abs(most.value) < 0.05) return `${names[0]} and ${name} are alike all year.`;
  const wordOf = most.value < 0 ? "drier" : "wetter";
  const same = Array.from(change).filter((value) => Math.sign(value) === Math.sign(most.value)).length;
  const share = same / change.length;
  const span =
    share > 0.995
      ? "all year"
      : share > 0.5
        ? `on ${same} of ${change.length} days`
        : `on only ${same} of ${change.length} days`;
  return `${name} is ${wordOf} ${span}, by ${Math.abs(most.value).toFixed(1)} ${unit === "points" ? "points" : "% RH"} on ${dayNameLong(time, most.day)}`;
}

const key = ({ material, thickness_m }: CaseLayer): string => `${material.id}:${thickness_m.toFixed(5)}`;
const named = (layers: readonly CaseLayer[], units: Units): string =>
  layers
    .map(
      ({ name, thickness_m }) =>
        `${lowerFirst(name.split(/[,(]/)[0]!.trim())}${thickness_m > 0 ? `, ${lengthText(thickness_m, units)}` : ""}`,
    )
    .join("; ");

/** A sentence that ends in "in." has its full stop already. */
const stop = (text: string): string => (text.endsWith(".") ? text : `${text}.`);

/** How two cases differ, and what they share: so that a difference is never laid at the wrong door. */
export function differsWords(a: Case, b: Case, names: readonly [string, string], units: Units): string {
  const only = (from: Case, other: Case): CaseLayer[] => {
    const rest = other.layers.map(key);
    return from.layers.filter((layer) => {
      const at = rest.indexOf(key(layer));
      if (at >= 0) rest.splice(at, 1);
      return at < 0;
    });
  };
  const [onlyA, onlyB] = [only(a, b), only(b, a)];
  const parts = [
    ...(onlyA.length > 0 ? [`Only ${names[0]} has ${stop(named(onlyA, units))}`] : []),
    ...(onlyB.length > 0 ? [`Only ${names[1]} has ${stop(named(onlyB, units))}`] : []),
    ...(onlyA.length + onlyB.length === 0 ? ["Both have the same layers."] : []),
  ];
  const sameAir = JSON.stringify(a.leaks) === JSON.stringify(b.leaks);
  const sameLoads = JSON.stringify([a.exposure, a.run]) === JSON.stringify([b.exposure, b.run]);
  if (sameLoads)
    parts.push(
      sameAir
        ? "Site, face, room and air leakage are the same."
        : "Site, face and room are the same; air leakage differs.",
    );
  return parts.join(" ");
}
