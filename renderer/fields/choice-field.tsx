import { useId } from "react";
import "./fields.css";

interface ChoiceFieldProps<Value extends string> {
  readonly label: string;
  readonly value: Value;
  readonly choices: readonly { readonly value: Value; readonly words: string }[];
  readonly onChange: (value: Value) => void;
  readonly note?: string | undefined;
}

/** One of a few, in the trade's words with the number beside them. */
export function ChoiceField<Value extends string>({ label, value, choices, onChange, note }: ChoiceFieldProps<Value>) {
  const id = useId();
  return (
    <div className="form-row">
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        className="field"
        value={value}
        aria-describedby={note ? `${id}-note` : undefined}
        onChange={(event) => {
          const chosen = choices.find((choice) => choice.value === event.target.value);
          if (chosen) onChange(chosen.value);
        }}
      >
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value}>
            {choice.words}
          </option>
        ))}
      </select>
      {note && (
        <span id={`${id}-note`} className="form-note note">
          {note}
        </span>
      )}
    </div>
  );
}
