import type { Material } from "../materials/material.ts";
import type { Air, Face, Indoor, Lab, Leak, Path, RunSettings, Site } from "./project.ts";

/** A layer with its material looked up and its start state settled. */
export interface CaseLayer {
  readonly id: string;
  readonly name: string;
  readonly material: Material;
  /** 0 for membranes. */
  readonly thickness_m: number;
  readonly contact: { readonly thermal_m2KW: number; readonly vapour_m2sPakg: number; readonly liquid: boolean } | null;
  /** Air changes per hour with outdoor air; null: not ventilated. */
  readonly airChangesPerHour: number | "driven" | null;
  /** Start humidity, or water content where that was given. */
  readonly initial: { readonly relativeHumidity: number } | { readonly water_kgm3: number };
}

/**
 * One path of one option on one exposure: everything that decides a run but the weather's own numbers. Plain data;
 * the same case gives the same result to the bit, and its hash is the result's key.
 */
export interface Case {
  readonly project: string;
  readonly option: string;
  readonly optionName: string;
  readonly path: string;
  readonly pathName: string;
  readonly pathKind: Path["kind"];
  /** Outside first. */
  readonly layers: readonly CaseLayer[];
  readonly leaks: readonly Leak[];
  /** Depths asked for besides interfaces and layer means. */
  readonly probes: readonly { readonly id: string; readonly depth_m: number; readonly label: string }[];
  readonly exposure:
    | {
        readonly kind: "site";
        readonly site: Site;
        readonly face: Face;
        readonly indoor: Indoor;
        readonly air: Air | null;
      }
    | { readonly kind: "lab"; readonly lab: Lab; readonly air: Air | null };
  readonly run: RunSettings;
}
