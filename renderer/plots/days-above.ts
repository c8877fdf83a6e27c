/** Days whose value lies above a level. */
export function daysAbove(values: ArrayLike<number>, level: number): number {
  let days = 0;
  for (let day = 0; day < values.length; day++) if (values[day]! > level) days++;
  return days;
}

/** How many days lie above each level from `from` to `to`: a falling staircase. */
export function daysAboveCurve(
  values: ArrayLike<number>,
  from: number,
  to: number,
  step: number,
): { level: number; days: number }[] {
  if (!(step > 0)) throw new RangeError(`step must be > 0, got ${step}`);
  const count = Math.round((to - from) / step);
  return Array.from({ length: count + 1 }, (_, i) => {
    const level = from + i * step;
    return { level, days: daysAbove(values, level) };
  });
}

/** Stretches of days on end above a level, first and last day of each. */
export function spellsAbove(values: ArrayLike<number>, level: number): { from: number; to: number }[] {
  const spells: { from: number; to: number }[] = [];
  let from = -1;
  for (let day = 0; day <= values.length; day++) {
    const above = day < values.length && values[day]! > level;
    if (above && from < 0) from = day;
    if (!above && from >= 0) {
      spells.push({ from, to: day - 1 });
      from = -1;
    }
  }
  return spells;
}
