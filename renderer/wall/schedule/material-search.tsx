import { useMemo, useState } from "react";
import { Autocomplete, Input, Label, ListBox, ListBoxItem, SearchField, Text } from "react-aria-components";
import { findMaterials, type Material } from "../../../solver/index.ts";
import type { Units } from "../../state/index.ts";
import { lengthText, permeanceFigure, permeanceUnit, resistanceText } from "../../units/index.ts";
import { layerFigures } from "../layer-figures.ts";
import "./material-search.css";

interface MaterialSearchProps {
  readonly own: readonly Material[];
  readonly units: Units;
  readonly onChoose: (materialId: string, stock_m: number | null) => void;
}

interface Row {
  readonly id: string;
  readonly name: string;
  readonly group: string;
  readonly stock_m: number | null;
  readonly figures: string;
}

function rowOf(material: Material, stock_m: number | null, units: Units): Row {
  const layer = { id: material.id, material, ...(stock_m === null ? {} : { thickness_m: stock_m }) };
  const { resistance_m2KW, permeance } = layerFigures(layer, () => material);
  const figures = [
    stock_m === null ? "" : lengthText(stock_m, units),
    resistance_m2KW === null ? "" : resistanceText(resistance_m2KW, units),
    permeance === null
      ? ""
      : `${permeanceUnit(units)} ${[...new Set(permeance.map((value) => permeanceFigure(value, units)))].join("–")}`,
  ];
  return {
    id: material.id,
    name: material.name,
    group: material.group ?? "Materials of this project",
    stock_m,
    figures: figures.filter(Boolean).join(" · "),
  };
}

/** The catalogue and the project's own materials, searched by trade name. */
export function MaterialSearch({ own, units, onChoose }: MaterialSearchProps) {
  const [words, setWords] = useState("");
  const rows = useMemo(
    () => [
      ...own
        .filter((material) => material.name.toLowerCase().includes(words.trim().toLowerCase()))
        .map((material) => rowOf(material, null, units)),
      ...findMaterials(words).map((material) =>
        rowOf(material, material.kind === "membrane" ? null : (material.stock_m[0] ?? 0.1), units),
      ),
    ],
    [own, units, words],
  );
  return (
    <div className="material-search">
      <Autocomplete inputValue={words} onInputChange={setWords}>
        <SearchField autoFocus className="search-field">
          <Label>Search by trade name, such as foam, strand board, paint</Label>
          <Input className="field" />
        </SearchField>
        <ListBox
          className="material-list"
          aria-label="Materials"
          items={rows}
          onAction={(key) => {
            const row = rows.find((candidate) => candidate.id === key);
            if (row) onChoose(row.id, row.stock_m);
          }}
          renderEmptyState={() => <p className="quiet">No material of that name. Try a shorter word.</p>}
        >
          {(row) => (
            <ListBoxItem
              id={row.id}
              className="material-row"
              textValue={`${row.name} ${row.group} ${row.id.replaceAll("_", " ")}`}
            >
              <Text slot="label">{row.name}</Text>
              <span className="material-group">{row.group}</span>
              <Text slot="description" className="material-figures">
                {row.figures}
              </Text>
            </ListBoxItem>
          )}
        </ListBox>
      </Autocomplete>
    </div>
  );
}
