/** Opaque cloud in tenths by the day's clearness 0.1 to 0.8, means of 09 to 17 h over 57 typical-year files (COMPUTED). */
const cloudTenths = [9.7, 9.6, 9.2, 7.8, 6.0, 3.6, 1.4, 0.4] as const;

/** Opaque cloud 0..1 from the daily clearness index 0..1. */
export function cloudFromClearness(clearness: number): number {
  const at = Math.min(7, Math.max(0, clearness * 10 - 1));
  const low = Math.min(6, Math.floor(at));
  return (cloudTenths[low]! + (cloudTenths[low + 1]! - cloudTenths[low]!) * (at - low)) / 10;
}
