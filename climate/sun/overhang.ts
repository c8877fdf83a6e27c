import type { SunPosition } from "./sun-position.ts";

const degree = Math.PI / 180;

/** A long horizontal overhang: how far it stands out, and how high it is above the point of the face that is looked at. */
export interface Overhang {
  readonly depth_m: number;
  readonly heightAbove_m: number;
}

/** Angle from the face point to the overhang's edge, above the horizontal [rad]; null without an overhang. */
function edgeAngle(overhang: Overhang | undefined): number | null {
  return overhang && overhang.depth_m > 0 ? Math.atan2(overhang.heightAbove_m, overhang.depth_m) : null;
}

/**
 * True when the overhang keeps the sun's disc off the point: the profile angle (altitude seen square to the face) is steeper
 * than the line to the overhang's edge. Source: profile angle of ASHRAE Handbook Fundamentals, fenestration chapter.
 */
export function overhangMasks(sun: SunPosition, azimuth_deg: number, overhang: Overhang | undefined): boolean {
  const edge = edgeAngle(overhang);
  if (edge === null || sun.cosZenith <= 0) return false;
  const outward = Math.cos(sun.altitude_deg * degree) * Math.cos((sun.azimuth_deg - azimuth_deg) * degree);
  return outward > 0 && Math.atan2(sun.cosZenith, outward) > edge;
}

/**
 * View factor from the face to the open sky, 0..1: (1 + cos tilt)/2 less what a long overhang hides.
 * Between two directions in the section plane a long strip has the view factor (sin b - sin a)/2, angles from the normal
 * (Hottel's crossed strings). For a wall: half of height/sqrt(height^2 + depth^2).
 */
export function skyView(tilt_deg: number, overhang: Overhang | undefined): number {
  const open = (1 + Math.cos(tilt_deg * degree)) / 2;
  const edge = edgeAngle(overhang);
  if (edge === null) return open;
  const normalElevation = Math.PI / 2 - tilt_deg * degree;
  const toEdge = Math.min(Math.PI / 2, Math.max(-Math.PI / 2, edge - normalElevation));
  return Math.max(0, Math.min(open, (Math.sin(toEdge) + Math.sin(normalElevation)) / 2));
}
