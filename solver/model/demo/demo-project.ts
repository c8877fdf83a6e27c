import type { Layer, Path, Project } from "../project.ts";

/** 2 in. of extruded polystyrene outside the sheathing. */
const continuousInsulation = (): Layer => ({ id: "ci", material: "xps", thickness_m: 0.0508, roles: ["thermal"] });

const outside = (withInsulation: boolean): Layer[] => [
  { id: "cladding", material: "pine_lap_siding", thickness_m: 0.019 },
  { id: "gap", material: "vent_cavity_19", thickness_m: 0.019, ventilation: { airChangesPerHour: 200 } },
  ...(withInsulation ? [continuousInsulation()] : []),
  { id: "wrb", material: "housewrap", roles: ["water"] },
  { id: "sheathing", material: "osb_111", thickness_m: 0.0111, roles: ["air"] },
];
const inside = (): Layer[] => [
  { id: "retarder", material: "kraft_facing", roles: ["vapour"] },
  { id: "gypsum", material: "gypsum_board_127", thickness_m: 0.0127 },
  { id: "paint", material: "paint_latex" },
];
const bay = (withInsulation: boolean): Path => ({
  id: "bay",
  kind: "studBay",
  areaShare: 0.75,
  layers: [
    ...outside(withInsulation),
    { id: "cavity", material: "glass_fibre_batt", thickness_m: 0.14, roles: withInsulation ? [] : ["thermal"] },
    ...inside(),
  ],
  leaks: [{ id: "leak", to: "sheathing", at: "inside", flow_m3hm2: 0.05 }],
});
const stud = (withInsulation: boolean): Path => ({
  id: "stud",
  kind: "stud",
  name: "Stud and plates",
  areaShare: 0.25,
  layers: [...outside(withInsulation), { id: "framing", material: "spf_framing", thickness_m: 0.14 }, ...inside()],
});

/**
 * The wall that opens when nothing else is given: an invented house on an invented road, with real weather of its zone.
 * Indoors 35 % RH in winter: the common design figure for a house with mechanical ventilation and no humidifier, rising to 60 % in summer.
 */
export const demoProject: Project = {
  format: "wallyear",
  formatVersion: 1,
  name: "Larch Hollow house",
  notes:
    "An invented house in zone 6A. Option A has no insulation outside the sheathing, option B has 2 in. of it; the frame is the same 2x6 wall with 25 % framing.",
  site: {
    weather: { city: "burlington-vt" },
    climateZone: "6A",
    face: {
      azimuth_deg: 0,
      tilt_deg: 90,
      height_m: 5,
      shelter: "medium",
      solarAbsorptance: 0.6,
      longwaveEmissivity: 0.9,
    },
  },
  indoor: {
    method: "seasonal",
    winterTemperature_C: 21,
    summerTemperature_C: 24,
    winterRelativeHumidity: 0.35,
    summerRelativeHumidity: 0.6,
  },
  air: { ach50: 3, storeys: 2 },
  run: { start: "10-01", years: 2, initial: "delivered" },
  options: [
    { id: "A", name: "2x6, no exterior insulation", paths: [bay(false), stud(false)] },
    { id: "B", name: "2x6 with 2 in. exterior insulation", paths: [bay(true), stud(true)] },
  ],
};
