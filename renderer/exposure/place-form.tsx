import { useState, type DragEvent } from "react";
import { ComboBox, Input, Label, ListBox, ListBoxItem, Popover } from "react-aria-components";
import { annualRain_mm, findPlaces, placeById, placeName } from "../../climate/index.ts";
import type { Site } from "../../solver/index.ts";
import { ChoiceField } from "../fields/index.ts";
import { chooseWeather, putWeather } from "../state/documents.ts";
import type { Units } from "../state/index.ts";
import { rainText } from "../units/index.ts";
import { changeSite } from "./exposure-edits.ts";
import { years } from "./face-words.ts";

const mostShown = 80;

/** Where the house stands: one of the embedded places, or a file of hourly weather. */
export function PlaceForm({ site, units }: { site: Site; units: Units }) {
  const { weather } = site;
  const city = typeof weather.city === "string" ? placeById(weather.city) : undefined;
  const [words, setWords] = useState<string | null>(null);
  const [over, setOver] = useState(false);
  const found = findPlaces(words ?? "").slice(0, mostShown);

  const drop = (event: DragEvent): void => {
    event.preventDefault();
    setOver(false);
    const file = event.dataTransfer.files[0];
    if (file) void file.text().then((text) => putWeather(file.name, text));
  };

  return (
    <section
      aria-label="Place"
      onDragOver={(event) => event.preventDefault()}
      onDragEnter={() => setOver(true)}
      onDrop={drop}
    >
      <h2 className="form-head">Place and year</h2>
      <ComboBox
        className="form-row"
        aria-label="Place"
        inputValue={words ?? (city ? placeName(city) : "")}
        onInputChange={setWords}
        items={found}
        allowsEmptyCollection
        menuTrigger="input"
        onChange={(key) => {
          const place = key === null ? undefined : placeById(String(key));
          setWords(null);
          if (!place) return;
          const zone = /^[0-8][ABC]?/.exec(place.climateZone)?.[0];
          changeSite(`Move to ${placeName(place)}`, {
            weather: { city: place.id },
            ...(zone ? { climateZone: zone } : {}),
          });
        }}
        onBlur={() => setWords(null)}
      >
        <Label>Place</Label>
        <Input
          className="field"
          placeholder={city ? "" : "Name of a town"}
          onFocus={(event) => event.target.select()}
        />
        <Popover className="menu-popover place-popover" placement="bottom start">
          <ListBox
            className="place-list"
            renderEmptyState={() => (
              <p className="place-empty">No embedded place of that name. Use a weather file of the nearest station.</p>
            )}
          >
            {(place: (typeof found)[number]) => (
              <ListBoxItem id={place.id} className="menu-item" textValue={placeName(place)}>
                <span>{placeName(place)}</span>
                <span className="menu-keys">
                  zone {place.climateZone} · {rainText(annualRain_mm(place), units)}
                </span>
              </ListBoxItem>
            )}
          </ListBox>
        </Popover>
      </ComboBox>
      {city && (
        <ChoiceField
          label="Year"
          value={years.find(({ value }) => value === weather["year"])?.value ?? "typical"}
          choices={years}
          onChange={(year) => changeSite("Choose another year", { weather: { city: city.id, year } })}
          note="A synthetic year made from monthly normals, the same for everybody."
        />
      )}
      {!city && <p className="form-file">{typeof weather.file === "string" ? weather.file : ""}</p>}
      <p className={over ? "file-drop over" : "file-drop"}>
        Or drop an hourly weather file here: EPW, TMY3 or logged CSV.{" "}
        <button type="button" className="verb" onClick={() => void chooseWeather()}>
          Choose a file
        </button>
      </p>
    </section>
  );
}
