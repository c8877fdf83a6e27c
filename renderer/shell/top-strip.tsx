import { useActiveOption, useProject, useUnits, useViewStore, view, type Units } from "../state/index.ts";
import { MainMenu } from "./main-menu.tsx";
import { sheets } from "./sheets.ts";
import "./top-strip.css";

const unitWords: Record<Units, string> = {
  ip: "in. · °F · perm",
  si: "mm · °C · sd",
  both: "in. and mm",
};
const nextUnits: Record<Units, Units> = { ip: "si", si: "both", both: "ip" };

export function TopStrip() {
  const sheet = useViewStore((state) => state.sheet);
  const { options } = useProject();
  const active = useActiveOption();
  const units = useUnits();

  return (
    <header className="top-strip" data-pane="Sheets and options" tabIndex={-1}>
      <MainMenu />
      <nav aria-label="Sheets">
        <ul className="tabs">
          {sheets.map(({ id, number, title }) => (
            <li key={id}>
              <button
                type="button"
                className="tab"
                aria-current={id === sheet ? "page" : undefined}
                onClick={() => view({ sheet: id })}
              >
                <span className="tab-number">{number}</span> {title}
              </button>
            </li>
          ))}
        </ul>
      </nav>
      <div className="option-letters" role="group" aria-label="Option">
        <span className="quiet" aria-hidden="true">
          Option
        </span>
        {options.map((option) => (
          <button
            key={option.id}
            type="button"
            className="letter"
            aria-pressed={option.id === active.id}
            aria-label={`Option ${option.id}, ${option.name}`}
            onClick={() => view({ option: option.id })}
          >
            {option.id}
          </button>
        ))}
      </div>
      <button
        type="button"
        className="units-button"
        aria-label={`Units: ${unitWords[units]}. Change units`}
        onClick={() => view({ units: nextUnits[units] })}
      >
        {unitWords[units]}
      </button>
    </header>
  );
}
