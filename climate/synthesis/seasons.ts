import { monthOfDay } from "../calendar.ts";

/** 0 winter, 1 spring, 2 summer, 3 autumn of a month 0..11, on either half of the Earth. */
export function seasonOf(month: number, latitude_deg: number): 0 | 1 | 2 | 3 {
  const northern = latitude_deg >= 0 ? month : (month + 6) % 12;
  return Math.floor(((northern + 1) % 12) / 3) as 0 | 1 | 2 | 3;
}

export const seasonOfDay = (day: number, latitude_deg: number): 0 | 1 | 2 | 3 =>
  seasonOf(monthOfDay(day), latitude_deg);

/**
 * Day-to-day standard deviation [K] and correlation of the daily mean temperature by latitude and season, where a place has none:
 * medians of 57 typical-year files (COMPUTED).
 */
export function usualDayToDay(latitude_deg: number): readonly (readonly [number, number])[] {
  const latitude = Math.abs(latitude_deg);
  if (latitude < 35)
    return [
      [3.2, 0.57],
      [2.3, 0.64],
      [1.4, 0.53],
      [1.9, 0.6],
    ];
  if (latitude < 42)
    return [
      [4.3, 0.6],
      [3.7, 0.56],
      [2.3, 0.63],
      [3.2, 0.51],
    ];
  return [
    [4.2, 0.6],
    [3.5, 0.62],
    [2.7, 0.59],
    [2.8, 0.54],
  ];
}
