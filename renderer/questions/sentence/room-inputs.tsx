import { kgm2sPaPerPerm, type Case } from "../../../solver/index.ts";
import type { Units } from "../../state/index.ts";
import { parsePlain, parseShare, permeanceFigure, share, type Parsed } from "../../units/index.ts";
import { drawnValue } from "../asking/asked-case.ts";
import { askWith, type QuestionInputs } from "../asking/question-inputs.ts";
import { AskedNumber } from "./asked-number.tsx";

/** Still air lets this much vapour through a metre [kg/(m s Pa)]: the equivalent air layer of a permeance. Common practice. */
const airPermeability_kgmsPa = 2e-10;

const paintText = (perm: number, units: Units): string =>
  units === "si"
    ? `sd ${permeanceFigure(perm * kgm2sPaPerPerm, units)} m`
    : `${permeanceFigure(perm * kgm2sPaPerPerm, units)} perm`;

/** US perm from "10", "10 perm", "0.3 m"; without a unit in that of the window. */
export function parsePaint(text: string, units: Units): Parsed {
  const plain = text.replace(/^\s*sd/i, "").trim();
  const asLayer = /m$/i.test(plain) && !/perm$/i.test(plain) ? true : units === "si" && !/perms?$/i.test(plain);
  const read = parsePlain(plain.replace(/\s*(perms?|m)$/i, ""), asLayer ? 0.005 : 0.01, asLayer ? 300 : 200);
  if (!read.ok) return { ok: false, message: `${read.message} Write ${units === "si" ? "sd 0.35 m" : "10 perm"}.` };
  return asLayer ? { ok: true, value: airPermeability_kgmsPa / read.value / kgm2sPaPerPerm } : read;
}

const near = (one: number, other: number): boolean => Math.abs(one - other) <= 0.005 * Math.max(one, other);

/** "a finish of 10 perm", underlined; nothing in a wall that is lined without one. `aCase` is the wall as drawn. */
export function PaintInput({ aCase, inputs, units }: { aCase: Case; inputs: QuestionInputs; units: Units }) {
  const drawn = drawnValue(aCase, "finishPermeance");
  if (drawn === null) return null;
  const value = inputs.paint_perm ?? drawn;
  return (
    <>
      a finish of{" "}
      <AskedNumber
        label="Permeance of the finish on the room side"
        text={paintText(value, units)}
        parse={(text) => parsePaint(text, units)}
        changed={!near(value, drawn)}
        onChange={(perm) => askWith({ paint_perm: near(perm, drawn) ? null : perm })}
      />
    </>
  );
}

/** "35 % humidity", underlined. */
export function HumidityInput({ aCase, inputs }: { aCase: Case; inputs: QuestionInputs }) {
  const drawn = drawnValue(aCase, "winterHumidity");
  const value = inputs.humidity ?? drawn;
  return (
    <AskedNumber
      label="Humidity of the room in winter"
      text={value === null ? "the room as computed" : share(value)}
      parse={(text) => parseShare(text, 80)}
      changed={inputs.humidity !== null && inputs.humidity !== drawn}
      onChange={(humidity) => askWith({ humidity: humidity === drawn ? null : humidity })}
    />
  );
}
