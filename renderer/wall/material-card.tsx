import {
  materialById,
  type CatalogueMaterial,
  type Layer,
  type MaterialLookup,
  type PassportProperty,
} from "../../solver/index.ts";
import { materialOfLayer } from "../../solver/index.ts";
import { figure } from "../units/index.ts";
import { CurveFigure } from "./curve-figure.tsx";
import "./material-card.css";

const titles: Record<PassportProperty, string> = {
  density: "Density",
  heatCapacity: "Heat capacity",
  conductivity: "Conductivity, dry",
  conductivityByTemperature: "Conductivity by temperature",
  conductivityByWater: "Conductivity by water",
  porosity: "Porosity",
  sorption: "Sorption",
  freeSaturation: "Free saturation",
  vapour: "Vapour resistance",
  liquid: "Water absorption coefficient",
  thermalResistance: "Thermal resistance",
  airChanges: "Usual air changes",
};

const flagWords: Record<string, string> = {
  SEEN: "read in the source",
  "SEEN-RANGE": "a range was read",
  COMPUTED: "computed",
  MIXED: "read in part",
  MEMORY: "recalled, to be checked",
  ASSUMED: "assumed by rule",
  USER: "given by the user",
};

const printedUnit = (unit: string): string =>
  unit === "-" ? "" : unit.replaceAll("m2", "m²").replaceAll("m3", "m³").replace("s^0.5", "√s");

const curve = (value: unknown): readonly (readonly [number, number])[] | null =>
  Array.isArray(value) ? (value as [number, number][]) : null;

/** The figure of a property in the unit of its passport; empty where it is a curve. */
function valueOf(material: CatalogueMaterial, property: PassportProperty): string {
  switch (property) {
    case "density":
      return figureOf(material.density_kgm3, 0);
    case "heatCapacity":
      return figureOf(material.heatCapacity_JkgK, 0);
    case "conductivity": {
      const given = material.conductivity_WmK;
      return figureOf(typeof given === "number" ? given : given?.dry_WmK, 3);
    }
    case "porosity":
      return figureOf(material.porosity, 2);
    case "freeSaturation":
      return figureOf(material.freeSaturation_kgm3, 0);
    case "liquid":
      return material.liquid && "absorption_kgm2s05" in material.liquid
        ? figureOf(material.liquid.absorption_kgm2s05, 4)
        : "";
    case "thermalResistance":
      return figureOf(material.thermalResistance_m2KW, 2);
    case "airChanges":
      return figureOf(material.usualAirChangesPerHour ?? undefined, 0);
    case "vapour":
      return vapourWords(material);
    case "sorption":
    case "conductivityByTemperature":
    case "conductivityByWater":
      return "curve";
  }
}

const figureOf = (value: number | undefined, digits: number): string =>
  value === undefined ? "—" : figure(value, digits);

function vapourWords(material: CatalogueMaterial): string {
  const perms = material.permeance_kgm2sPa;
  const points =
    curve(perms) ??
    (material.vapour && "resistanceFactor" in material.vapour ? curve(material.vapour.resistanceFactor) : null);
  if (points) {
    const scale = curve(perms) ? 1e12 : 1;
    return `${figure(points[0]![1] * scale, 0)} to ${figure(points.at(-1)![1] * scale, 0)}`;
  }
  if (typeof perms === "number") return figure(perms * 1e12, 0);
  return material.vapour && "resistanceFactor" in material.vapour
    ? figureOf(material.vapour.resistanceFactor as number, 1)
    : "—";
}

/** Where each figure of a material comes from: value, spread, how it is known, source. */
export function MaterialCard({ layer, lookup }: { layer: Layer; lookup: MaterialLookup }) {
  const found = materialOfLayer(layer, lookup);
  const entry = typeof layer.material === "string" ? materialById(layer.material) : undefined;
  if (!found) return <p className="remedy">Nobody knows the material of this layer. Choose another.</p>;
  if (!entry) {
    return (
      <div className="material-card">
        <h2 className="finding">{found.name}</h2>
        <p className="secondary">
          A material of this project: its figures stand in the project file, given by the user.
        </p>
      </div>
    );
  }
  const properties = (Object.keys(titles) as PassportProperty[]).filter((property) => entry.passport[property]);
  const sources = [...new Set(properties.flatMap((property) => entry.passport[property]!.sources))];
  const sorption = entry.sorption && "relativeHumidity" in entry.sorption ? entry.sorption.relativeHumidity : null;
  const vapour = entry.vapour && "resistanceFactor" in entry.vapour ? curve(entry.vapour.resistanceFactor) : null;
  return (
    <div className="material-card">
      <h2 className="finding">{entry.name}</h2>
      <p className="secondary">
        {entry.group}. Confidence {entry.confidence}:{" "}
        {{ A: "most figures were read", B: "some were read, some recalled", C: "mostly recalled" }[entry.confidence]}.
      </p>
      <table className="table card-table">
        <thead>
          <tr>
            <th>Figure</th>
            <th className="figure">value</th>
            <th>unit</th>
            <th>spread</th>
            <th>how known</th>
          </tr>
        </thead>
        <tbody>
          {properties.map((property) => {
            const passport = entry.passport[property]!;
            return (
              <tr key={property}>
                <th scope="row">{titles[property]}</th>
                <td className="figure">{valueOf(entry, property)}</td>
                <td className="secondary">{printedUnit(passport.unit)}</td>
                <td className="secondary">{passport.range ?? ""}</td>
                <td className="secondary">{flagWords[passport.flag] ?? passport.flag}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
      <div className="card-curves">
        {sorption && (
          <CurveFigure title="Water held, kg/m³" points={sorption} digits={sorption.at(-1)![1] < 20 ? 1 : 0} />
        )}
        {vapour && vapour.length > 1 && <CurveFigure title="Vapour resistance factor" points={vapour} digits={0} />}
      </div>
      <p className="note">{entry.note}</p>
      <h3 className="label">Sources</h3>
      <ul className="card-sources note">
        {sources.map((source) => (
          <li key={source}>{source}</li>
        ))}
      </ul>
    </div>
  );
}
