import { materialById, passportProperties, type CatalogueMaterial } from "../materials/index.ts";
import { amount, sayAmount } from "../studies/index.ts";
import type { Block, ReportInput } from "./report.ts";

/** "winterTemperature" as words. */
const words = (name: string): string => name.replace(/([A-Z])/g, (letter) => ` ${letter.toLowerCase()}`);

/** A named input with its unit: "winter temperature 21 °C". */
function inputWords(key: string, value: unknown): string {
  const [name = "", unit] = key.split("_");
  if (typeof value !== "number") return `${words(name)} ${JSON.stringify(value).replace(/["[\]{}]/g, "")}`;
  if (/humidity$/i.test(name)) return `${words(name)} ${Math.round(value * 1000) / 10} %`;
  return `${words(name)} ${value}${unit === undefined ? "" : unit === "C" ? " °C" : ` ${unit}`}`;
}

/** What was put in, in words. */
export function inputsTable(input: ReportInput): Block {
  const { site, indoor, air, run, lab } = input.project;
  const rows: string[][] = [["Weather", `${input.weather.label} (${input.weather.kind})`]];
  if (site !== undefined) {
    rows.push(["Climate zone", site.climateZone ?? "not given"]);
    rows.push([
      "Face",
      `azimuth ${site.face.azimuth_deg}°, tilt ${site.face.tilt_deg}°, solar absorptance ${site.face.solarAbsorptance}, emissivity ${site.face.longwaveEmissivity}`,
    ]);
    rows.push([
      "Rain that leaks in",
      site.rain?.leakShare === undefined
        ? "none given"
        : `${Number((site.rain.leakShare * 100).toPrecision(3))} % of what hits the face`,
    ]);
  }
  if (lab !== undefined) rows.push(["Faces", "laboratory faces from the project's own tables"]);
  if (indoor !== undefined)
    rows.push([
      "Room",
      Object.entries(indoor)
        .map(([key, value]) => inputWords(key, value))
        .join(", "),
    ]);
  rows.push(["Air tightness", air === undefined ? "not given" : `${air.ach50} per hour at 50 Pa`]);
  rows.push([
    "Run",
    `from ${run.start}, ${run.years} years, start state ${typeof run.initial === "string" ? run.initial : `${run.initial.relativeHumidity * 100} % RH`}`,
  ]);
  for (const option of input.options)
    for (const path of option.paths)
      for (const leak of path.case.leaks)
        rows.push([
          `Air leak, ${option.id}, ${path.case.pathName.toLowerCase()}`,
          `to ${leak.to}, ${leak.flow_m3hm2 === "driven" ? "driven by wind, stack and fan" : sayAmount(amount("flow", leak.flow_m3hm2), input.units)}`,
        ]);
  return { kind: "table", id: "inputs", caption: "Inputs", columns: [{ label: "What" }, { label: "Value" }], rows };
}

/** Materials of the report that come from the catalogue. */
export const catalogued = (input: ReportInput): readonly CatalogueMaterial[] => {
  const ids = new Set(
    input.options.flatMap((option) =>
      option.paths.flatMap((path) => path.case.layers.map((layer) => layer.material.id)),
    ),
  );
  return [...ids].flatMap((id) => materialById(id) ?? []);
};

/** How each figure of the materials is known. */
export function materialsTable(input: ReportInput): Block {
  const rows = catalogued(input).map((material) => [
    material.name,
    material.confidence,
    ...[
      passportProperties
        .flatMap((property) =>
          material.passport[property] === undefined
            ? []
            : [
                `${words(property)} ${material.passport[property].flag}${material.passport[property].range === null ? "" : ` (${material.passport[property].range})`}`,
              ],
        )
        .join("; "),
    ],
  ]);
  const known = new Set(catalogued(input).map((material) => material.id));
  const own = [
    ...new Map(
      input.options
        .flatMap((option) => option.paths.flatMap((path) => path.case.layers))
        .filter((layer) => !known.has(layer.material.id))
        .map((layer) => [layer.material.id, layer.name]),
    ).values(),
  ];
  return {
    kind: "table",
    id: "materials",
    caption: "Materials: how each figure is known",
    columns: [{ label: "Material" }, { label: "Confidence" }, { label: "Figures, flag and spread" }],
    rows: [...rows, ...own.map((name) => [name, "user", "USER: written in the project"])],
    note: "SEEN: read in the source. COMPUTED: worked out. MEMORY: recalled, to be checked before it is relied on. ASSUMED: a rule of ours. MIXED: its parts are known in different ways.",
  };
}
