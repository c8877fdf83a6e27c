import type { Face, Indoor, Project, Site } from "../../solver/index.ts";
import { applyEdit } from "../state/index.ts";

export const changeFace = (edit: string, change: Partial<Face>): void =>
  applyEdit(edit, (project) =>
    project.site ? { ...project, site: { ...project.site, face: { ...project.site.face, ...change } } } : project,
  );

export const changeSite = (edit: string, change: Partial<Site>): void =>
  applyEdit(edit, (project) => (project.site ? { ...project, site: { ...project.site, ...change } } : project));

export const changeRain = (edit: string, change: Partial<NonNullable<Site["rain"]>>): void =>
  applyEdit(edit, (project) =>
    project.site ? { ...project, site: { ...project.site, rain: { ...project.site.rain, ...change } } } : project,
  );

export const changeRoom = (edit: string, indoor: Indoor): void =>
  applyEdit(edit, (project: Project) => ({ ...project, indoor }));

export const changeAirTightness = (ach50: number): void =>
  applyEdit("Change the air tightness of the house", (project) => ({ ...project, air: { ...project.air, ach50 } }));

/** Gives a file that has no rain the monthly rain of a place. */
export const layMonthlyRain = (placeId: string, placeName: string): void =>
  applyEdit(`Lay the rain of ${placeName} over the year`, (project) => {
    const file = project.site?.weather.file;
    if (!project.site || typeof file !== "string") return project;
    return { ...project, site: { ...project.site, weather: { file, monthlyRainFrom: placeId } } };
  });
