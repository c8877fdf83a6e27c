import type { DrawnWall } from "../plots/section-strip.tsx";
import { wallThickness_m } from "../plots/wall-depths.ts";
import type { Units } from "../state/index.ts";
import { lengthText, resistanceText, Sentence } from "../units/index.ts";
import type { OptionInView } from "./option-in-view.ts";

/** An option's letter, name, thickness and resistance beside its map; with more than two, the letter is a choice. */
export function OptionWords({
  option,
  options,
  wall,
  units,
  onChoose,
}: {
  option: OptionInView;
  options: readonly OptionInView[];
  wall: DrawnWall;
  units: Units;
  onChoose: (id: string) => void;
}): React.JSX.Element {
  return (
    <div className="pair-words">
      {options.length > 2 ? (
        <select
          className="option-letter option-letter-choice"
          aria-label="Option shown here"
          value={option.id}
          onChange={(event) => onChoose(event.target.value)}
        >
          {options.map(({ id, name }) => (
            <option key={id} value={id}>
              {id} {name}
            </option>
          ))}
        </select>
      ) : (
        <b className="option-letter">{option.id}</b>
      )}
      <p className="pair-name">{option.name}</p>
      <p>
        <Sentence
          text={`${lengthText(wallThickness_m(wall.layers), units)}${option.wall ? `, ${resistanceText(option.wall.R_m2KW, units)}` : ""}`}
        />
      </p>
    </div>
  );
}
