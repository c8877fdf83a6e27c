import type { Project } from "../../solver/index.ts";

/** What stands on the board when the program opens. */
export function openingProject(): Project {
  return {
    format: "wallyear",
    formatVersion: 1,
    name: "New wall",
    run: { start: "10-01", years: 3, initial: "delivered" },
    options: [
      {
        id: "A",
        name: "2×6",
        paths: [
          {
            id: "bay",
            kind: "studBay",
            areaShare: 1,
            layers: [
              {
                id: "sheathing",
                thickness_m: 0.0111125,
                material: {
                  id: "board",
                  name: "Sheathing board",
                  kind: "bulk",
                  density_kgm3: 600,
                  heatCapacity_JkgK: 1600,
                  conductivity_WmK: 0.11,
                  wood: true,
                },
              },
            ],
          },
        ],
      },
    ],
  };
}
