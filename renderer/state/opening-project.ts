import { demoProject, type Project } from "../../solver/index.ts";

/** What stands on the board when the program opens: the demo, so that there are answers at once. */
export const openingProject = (): Project => demoProject;
