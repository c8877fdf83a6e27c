import type { Project } from "../../solver/index.ts";

const winds = ["north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"] as const;

/** The compass word of an azimuth, clockwise from north. */
export const facing = (azimuth_deg: number): string => winds[Math.round((((azimuth_deg % 360) + 360) % 360) / 45) % 8]!;

/** Where, which year, which face, in a few words. */
export function siteWords(project: Project): string {
  if (project.lab) return "Laboratory faces";
  if (!project.site) return "No weather chosen";
  const { weather, climateZone, face } = project.site;
  const place = typeof weather.city === "string" ? placeName(weather.city) : String(weather.file);
  return [place, climateZone ? `zone ${climateZone}` : "", facing(face.azimuth_deg)].filter(Boolean).join(" · ");
}

/** "burlington-vt" as people write it, until the climate's list gives the full name. */
function placeName(id: string): string {
  return id
    .split("-")
    .map((word) => (word.length === 2 ? word.toUpperCase() : word.charAt(0).toUpperCase() + word.slice(1)))
    .join(" ");
}
