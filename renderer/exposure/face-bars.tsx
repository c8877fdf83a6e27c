import type { RankedFace } from "../../climate/index.ts";
import type { Units } from "../state/index.ts";
import { figure, rainOnFaceText } from "../units/index.ts";
import { changeFace } from "./exposure-edits.ts";
import "./face-bars.css";

const names: Record<number, string> = { 0: "North", 90: "East", 180: "South", 270: "West" };

/** The four faces of the house, wettest first; choosing one turns the wall to it. */
export function FaceBars({
  faces,
  azimuth_deg,
  units,
}: {
  faces: readonly RankedFace[];
  azimuth_deg: number;
  units: Units;
}) {
  const ranked = faces.filter((face) => face.azimuth_deg in names);
  const most = Math.max(...ranked.map((face) => face.rain_kgm2), 1e-9);
  return (
    <section aria-label="Faces, wettest first" data-pane="Faces" tabIndex={-1}>
      <div className="head">
        <h2>Faces, wettest first</h2>
        <span className="note">rain driven onto them in the year; sun</span>
      </div>
      <ol className="face-bars">
        {ranked.map((face) => (
          <li key={face.azimuth_deg}>
            <button
              type="button"
              className="cell-button face-name"
              aria-pressed={face.azimuth_deg === azimuth_deg}
              onClick={() =>
                changeFace(`Turn the face ${names[face.azimuth_deg]!.toLowerCase()}`, { azimuth_deg: face.azimuth_deg })
              }
            >
              {names[face.azimuth_deg]}
            </button>
            <span className="face-track">
              <span className="face-bar" style={{ width: `${(face.rain_kgm2 / most) * 100}%` }} />
            </span>
            <span className="face-figure">{rainOnFaceText(face.rain_kgm2, units)}</span>
            <span className="face-figure secondary">{figure(face.sun_kWhm2, 0)} kWh/m²</span>
          </li>
        ))}
      </ol>
    </section>
  );
}
