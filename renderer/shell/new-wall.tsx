import { useState } from "react";
import { ComboBox, Input, Label, ListBox, ListBoxItem, Popover } from "react-aria-components";
import { findPlaces, placeById, placeName } from "../../climate/index.ts";
import { starterWalls, type Project } from "../../solver/index.ts";
import { ChoiceField } from "../fields/index.ts";
import { showNew } from "../state/documents.ts";
import { view, type QuestionId, type SheetId } from "../state/index.ts";
import { sheets } from "./sheets.ts";
import "./new-wall.css";

interface Ask {
  readonly value: string;
  readonly words: string;
  readonly sheet: SheetId;
  readonly question?: QuestionId;
}

const asks: readonly Ask[] = [
  { value: "year", words: "How does it fare through a year?", sheet: "year" },
  { value: "howThick", words: "How thick must the insulation be?", sheet: "questions", question: "howThick" },
  { value: "drying", words: "Which way does it dry?", sheet: "questions", question: "drying" },
  { value: "whatIf", words: "What if we are wrong?", sheet: "questions", question: "whatIf" },
  { value: "humidity", words: "How humid may it be inside?", sheet: "questions", question: "humidity" },
  { value: "wall", words: "None yet: draw it first", sheet: "wall" },
];

/** The starter's project at another place, its climate zone with it. */
function movedTo(project: Project, placeId: string): Project {
  const place = placeById(placeId);
  if (!place || !project.site) return project;
  const zone = /^[0-8][ABC]?/.exec(place.climateZone)?.[0];
  return {
    ...project,
    site: { ...project.site, weather: { city: placeId }, ...(zone ? { climateZone: zone } : {}) },
  };
}

/** Three things are asked, and the first year is run: where, which wall, which question. */
export function NewWall() {
  const [placeId, setPlaceId] = useState("burlington-vt");
  const [words, setWords] = useState<string | null>(null);
  const [starterId, setStarterId] = useState(starterWalls[0]!.id);
  const [ask, setAsk] = useState("year");
  const place = placeById(placeId);
  const starter = starterWalls.find(({ id }) => id === starterId) ?? starterWalls[0]!;
  const drawn = new Set(sheets.map(({ id }) => id));
  const possible = asks.filter(({ sheet }) => drawn.has(sheet));

  const begin = (): void => {
    const chosen = possible.find(({ value }) => value === ask) ?? possible[0]!;
    showNew(movedTo(starter.project, placeId));
    view({ openDialog: null, sheet: chosen.sheet, ...(chosen.question ? { question: chosen.question } : {}) });
  };

  return (
    <form
      className="new-wall"
      onSubmit={(event) => {
        event.preventDefault();
        begin();
      }}
    >
      <ComboBox
        className="form-row"
        inputValue={words ?? (place ? placeName(place) : "")}
        onInputChange={setWords}
        items={findPlaces(words ?? "").slice(0, 80)}
        menuTrigger="input"
        allowsEmptyCollection
        onChange={(key) => {
          if (key !== null) setPlaceId(String(key));
          setWords(null);
        }}
        onBlur={() => setWords(null)}
      >
        <Label>Where</Label>
        <Input className="field" onFocus={(event) => event.target.select()} />
        <Popover className="menu-popover place-popover">
          <ListBox
            className="place-list"
            renderEmptyState={() => <p className="place-empty">No embedded place of that name.</p>}
          >
            {(found: ReturnType<typeof findPlaces>[number]) => (
              <ListBoxItem id={found.id} className="menu-item" textValue={placeName(found)}>
                <span>{placeName(found)}</span>
                <span className="menu-keys">zone {found.climateZone}</span>
              </ListBoxItem>
            )}
          </ListBox>
        </Popover>
      </ComboBox>
      <ChoiceField
        label="Which wall"
        value={starterId}
        choices={starterWalls.map(({ id, title }) => ({ value: id, words: title }))}
        onChange={setStarterId}
        note={starter.sentence}
      />
      <ChoiceField label="Question" value={ask} choices={possible} onChange={setAsk} />
      <p className="new-wall-end">
        <button type="submit" className="verb strong">
          Draw it and run the year
        </button>
      </p>
    </form>
  );
}
