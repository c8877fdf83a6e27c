import type { RoomSetting } from "./room-setting.ts";

/**
 * Rooms that are wetter than a dwelling's mean, as plain settings to start from and change.
 * Values are common practice without a source: a family bathroom averaged over the day, a heated indoor pool hall
 * (air about 2 K above the water, 50 to 60 % so that bathers do not chill and the hall does not drip).
 */
export const roomPresets: Readonly<Record<"bathroom" | "pool", RoomSetting>> = {
  bathroom: {
    method: "seasonal",
    winterTemperature_C: 23,
    summerTemperature_C: 25,
    winterRelativeHumidity: 0.55,
    summerRelativeHumidity: 0.7,
  },
  pool: { method: "fixed", temperature_C: 30, relativeHumidity: 0.55 },
};
