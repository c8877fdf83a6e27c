import { useId } from "react";

interface AskedChoiceProps<Value extends string> {
  readonly label: string;
  readonly value: Value;
  readonly choices: readonly { readonly value: Value; readonly words: string }[];
  readonly onChange: (value: Value) => void;
  /** True: it differs from what is drawn. */
  readonly changed?: boolean;
}

/** An underlined word of a question, one of a few. */
export function AskedChoice<Value extends string>({
  label,
  value,
  choices,
  onChange,
  changed,
}: AskedChoiceProps<Value>) {
  const id = useId();
  return (
    <select
      id={id}
      className={changed === true ? "asked asked-changed" : "asked"}
      aria-label={label}
      value={value}
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
  );
}
