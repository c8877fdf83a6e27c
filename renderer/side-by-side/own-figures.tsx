import { QuantityField } from "../fields/index.ts";
import { onOption } from "../state/edits.ts";
import { applyEdit } from "../state/index.ts";
import { parsePlain, type Parsed } from "../units/index.ts";
import type { OptionInView } from "./option-in-view.ts";

type OwnFigure = "price_perM2" | "carbon_kgCO2ePerM2";

const fields: readonly { readonly field: OwnFigure; readonly words: string; readonly most: number }[] = [
  { field: "price_perM2", words: "price a m²", most: 1e6 },
  { field: "carbon_kgCO2ePerM2", words: "kg CO₂e a m²", most: 1e4 },
];

/** An empty field takes the figure out. */
const parse =
  (field: OwnFigure, most: number) =>
  (text: string): Parsed =>
    text.trim() === "" ? { ok: true, value: NaN } : parsePlain(text, field === "price_perM2" ? 0 : -most, most);

function set(id: string, field: OwnFigure, words: string, value: number): void {
  applyEdit(
    `Set ${words} of ${id}`,
    onOption(id, (option) => {
      const { [field]: before, ...rest } = option;
      if (Number.isNaN(value)) return before === undefined ? option : rest;
      return before === value ? option : { ...option, [field]: value };
    }),
  );
}

/** What the user knows and the program does not: a price and a carbon figure for each option, compared like everything else. */
export function OwnFigures({ options }: { readonly options: readonly OptionInView[] }): React.JSX.Element {
  const known = options.some(
    ({ price_perM2, carbon_kgCO2ePerM2 }) => price_perM2 !== null || carbon_kgCO2ePerM2 !== null,
  );
  return (
    <details className="own-figures" open={known}>
      <summary>Prices and carbon of your own</summary>
      {options.flatMap((option) =>
        fields.map(({ field, words, most }) => (
          <QuantityField
            key={`${option.id}-${field}`}
            label={`${option.id}, ${words}`}
            text={option[field] === null ? "" : String(option[field])}
            parse={parse(field, most)}
            onChange={(value) => set(option.id, field, words, value)}
          />
        )),
      )}
      <p className="note">
        Per square metre of wall, in your currency; carbon from environmental product declarations. Nothing here is
        known to the program.
      </p>
    </details>
  );
}
