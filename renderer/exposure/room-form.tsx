import { roomPresets } from "../../climate/index.ts";
import type { Indoor } from "../../solver/index.ts";
import { ChoiceField, QuantityField } from "../fields/index.ts";
import type { Units } from "../state/index.ts";
import { figure, parsePlain, parseShare, parseTemperature, share, temperatureText } from "../units/index.ts";
import { changeAirTightness, changeRoom } from "./exposure-edits.ts";

type Method = Indoor["method"];
/** Wetter rooms than a dwelling's mean: chosen, they leave their values in the fields of their method. */
type Preset = keyof typeof roomPresets;

const methods: readonly { value: Method; words: string }[] = [
  { value: "seasonal", words: "Rises with outdoor temperature" },
  { value: "fixed", words: "Fixed temperature and humidity" },
  { value: "ashrae160", words: "ANSI/ASHRAE 160, by house size" },
  { value: "en15026", words: "EN 15026, by occupancy" },
  { value: "iso13788", words: "ISO 13788, by humidity class" },
];

/** A room of each kind to start from, with the values that are usual for a dwelling. */
const starts: Partial<Record<Method, Indoor>> = {
  seasonal: {
    method: "seasonal",
    winterTemperature_C: 21,
    summerTemperature_C: 24,
    winterRelativeHumidity: 0.35,
    summerRelativeHumidity: 0.6,
  },
  fixed: { method: "fixed", temperature_C: 21, relativeHumidity: 0.4 },
  ashrae160: { method: "ashrae160", variant: "simplified" },
  en15026: { method: "en15026", load: "normal" },
  iso13788: { method: "iso13788", humidityClass: 2, temperature_C: 20 },
};

/** What air the room side meets, and how tight the house is. */
export function RoomForm({ indoor, ach50, units }: { indoor: Indoor; ach50: number | null; units: Units }) {
  const choices: readonly { value: Method | Preset; words: string }[] = [
    ...methods,
    ...(indoor.method === "logger" ? [{ value: "logger" as const, words: `Logged: ${indoor.file}` }] : []),
    { value: "bathroom", words: "Start from a bathroom: 55 % in winter" },
    { value: "pool", words: `Start from a pool hall: ${temperatureText(30, units)}, 55 %` },
  ];
  return (
    <section aria-label="Room">
      <h2 className="form-head">Room</h2>
      <ChoiceField
        label="Humidity"
        value={indoor.method}
        choices={choices}
        onChange={(chosen) => {
          const start =
            chosen === "bathroom" || chosen === "pool"
              ? (structuredClone(roomPresets[chosen]) as Indoor)
              : starts[chosen];
          if (start) changeRoom("Choose another room", start);
        }}
      />
      <MethodFields indoor={indoor} units={units} />
      <QuantityField
        label="Air tightness"
        text={ach50 === null ? "" : `${figure(ach50, 1)} ACH50`}
        parse={(text) => parsePlain(text.replace(/ach ?50|\/h|1\/h/i, ""), 0, 100)}
        onChange={changeAirTightness}
        note="Blower door at 50 Pa. New houses 1 to 3, old ones 7 to 15; common practice, no source."
      />
    </section>
  );
}

function MethodFields({ indoor, units }: { indoor: Indoor; units: Units }) {
  switch (indoor.method) {
    case "seasonal":
      return (
        <>
          <QuantityField
            label="Winter"
            text={share(indoor.winterRelativeHumidity)}
            parse={(text) => parseShare(text)}
            onChange={(winterRelativeHumidity) =>
              changeRoom("Change the winter humidity", { ...indoor, winterRelativeHumidity })
            }
            note="30 to 40 % with ventilation and no humidifier; common practice, no source."
          />
          <QuantityField
            label="Summer"
            text={share(indoor.summerRelativeHumidity)}
            parse={(text) => parseShare(text)}
            onChange={(summerRelativeHumidity) =>
              changeRoom("Change the summer humidity", { ...indoor, summerRelativeHumidity })
            }
          />
          <QuantityField
            label="Heated to"
            text={temperatureText(indoor.winterTemperature_C, units)}
            parse={(text) => parseTemperature(text, units)}
            onChange={(winterTemperature_C) =>
              changeRoom("Change the winter temperature", { ...indoor, winterTemperature_C })
            }
          />
        </>
      );
    case "fixed":
      return typeof indoor.temperature_C === "number" && typeof indoor.relativeHumidity === "number" ? (
        <>
          <QuantityField
            label="Temperature"
            text={temperatureText(indoor.temperature_C, units)}
            parse={(text) => parseTemperature(text, units)}
            onChange={(temperature_C) => changeRoom("Change the room temperature", { ...indoor, temperature_C })}
          />
          <QuantityField
            label="Humidity"
            text={share(indoor.relativeHumidity)}
            parse={(text) => parseShare(text)}
            onChange={(relativeHumidity) => changeRoom("Change the room humidity", { ...indoor, relativeHumidity })}
          />
        </>
      ) : (
        <p className="form-file">Twelve monthly values, as the project file gives them.</p>
      );
    case "ashrae160":
      return (
        <>
          <ChoiceField
            label="Method"
            value={indoor.variant}
            choices={[
              { value: "simplified", words: "Simplified" },
              { value: "intermediate", words: "Intermediate, by bedrooms" },
            ]}
            onChange={(variant) =>
              changeRoom("Choose another room method", {
                ...indoor,
                variant,
                ...(variant === "intermediate"
                  ? {
                      bedrooms: indoor.bedrooms ?? 3,
                      volume_m3: indoor.volume_m3 ?? 480,
                      airChangesPerHour: indoor.airChangesPerHour ?? 0.3,
                    }
                  : {}),
              })
            }
          />
          {indoor.variant === "intermediate" && (
            <QuantityField
              label="Bedrooms"
              text={String(indoor.bedrooms ?? 3)}
              parse={(text) => parsePlain(text, 1, 12)}
              onChange={(value) => changeRoom("Change the bedrooms", { ...indoor, bedrooms: Math.round(value) })}
            />
          )}
        </>
      );
    case "en15026":
      return (
        <ChoiceField
          label="Occupancy"
          value={indoor.load}
          choices={[
            { value: "normal", words: "Normal moisture load" },
            { value: "high", words: "High moisture load" },
          ]}
          onChange={(load) => changeRoom("Change the moisture load", { ...indoor, load })}
        />
      );
    case "iso13788":
      return (
        <ChoiceField
          label="Class"
          value={String(indoor.humidityClass)}
          choices={[
            { value: "1", words: "1, storage" },
            { value: "2", words: "2, offices, dwellings with ventilation" },
            { value: "3", words: "3, dwellings, occupancy not known" },
            { value: "4", words: "4, sports halls, kitchens" },
            { value: "5", words: "5, laundry, brewery, pool" },
          ]}
          onChange={(value) => changeRoom("Change the humidity class", { ...indoor, humidityClass: Number(value) })}
        />
      );
    case "logger":
      return null;
  }
}
