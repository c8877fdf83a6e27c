import { colourNames, solarAbsorptanceOf, solarAbsorptances } from "../../climate/index.ts";
import type { Face } from "../../solver/index.ts";
import { ChoiceField, QuantityField } from "../fields/index.ts";
import type { Units } from "../state/index.ts";
import { distanceText, parseDistance, parsePlain, share } from "../units/index.ts";
import { changeFace } from "./exposure-edits.ts";
import { colourWords, directions, shelterWords, withPresent } from "./face-words.ts";

/** Which face of the house, how high, how open, how dark. */
export function FaceForm({ face, units }: { face: Face; units: Units }) {
  const overhang = face.overhang ?? { depth_m: 0, heightAbove_m: 0 };
  const height_m = face.height_m ?? 5;
  return (
    <section aria-label="Face">
      <h2 className="form-head">Face</h2>
      <ChoiceField
        label="Looks"
        value={String(face.azimuth_deg)}
        choices={withPresent(directions, String(face.azimuth_deg), `${face.azimuth_deg}° from north`)}
        onChange={(value) => changeFace("Turn the face", { azimuth_deg: Number(value) })}
      />
      <QuantityField
        label="Azimuth"
        text={`${face.azimuth_deg}°`}
        parse={(text) => parsePlain(text.replace("°", ""), 0, 360)}
        onChange={(azimuth_deg) => changeFace("Turn the face", { azimuth_deg })}
        note="Clockwise from north: east 90, south 180."
      />
      <ChoiceField
        label="Ground"
        value={face.shelter ?? "medium"}
        choices={shelterWords}
        onChange={(shelter) => changeFace("Change the shelter", { shelter })}
      />
      <QuantityField
        label="Height"
        text={distanceText(height_m, units)}
        parse={(text) => parseDistance(text, units, 500)}
        onChange={(value) => changeFace("Change the height of the face", { height_m: Math.max(0.1, value) })}
        note="Of the middle of the wall above ground. Higher takes more rain."
      />
      <ChoiceField
        label="Colour"
        value={colourNames.find((name) => solarAbsorptances[name] === face.solarAbsorptance) ?? "as given"}
        choices={withPresent<string>(
          colourWords,
          colourNames.find((name) => solarAbsorptances[name] === face.solarAbsorptance) ?? "as given",
          `As given, takes up ${share(face.solarAbsorptance)} of the sun`,
        )}
        onChange={(name) => {
          const solarAbsorptance = solarAbsorptanceOf(name);
          if (solarAbsorptance !== undefined) changeFace(`Make the face ${name}`, { solarAbsorptance });
        }}
      />
      <QuantityField
        label="Eaves"
        text={overhang.depth_m > 0 ? distanceText(overhang.depth_m, units) : "0"}
        parse={(text) => parseDistance(text, units, 20)}
        onChange={(depth_m) => changeFace("Change the eaves", { overhang: { ...overhang, depth_m } })}
        note="How far they stand out. From 1 ft they keep rain off."
      />
    </section>
  );
}
