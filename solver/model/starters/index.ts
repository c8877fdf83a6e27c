import { boundaryWalls } from "./boundary-walls.ts";
import { frameWalls } from "./frame-walls.ts";
import { masonryAndOldWalls } from "./masonry-and-old-walls.ts";
import type { StarterWall } from "./parts.ts";

/** Walls to begin from: new frame walls, masonry and existing walls, and walls whose boundary is interrupted. */
export const starterWalls: readonly StarterWall[] = [...frameWalls, ...masonryAndOldWalls, ...boundaryWalls];
export type { StarterWall } from "./parts.ts";
