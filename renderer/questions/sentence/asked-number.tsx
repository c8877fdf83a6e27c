import { useId, useState, type KeyboardEvent } from "react";
import type { Parsed } from "../../units/index.ts";

interface AskedNumberProps {
  readonly label: string;
  /** The value with its unit, as the sentence says it. */
  readonly text: string;
  readonly parse: (text: string) => Parsed;
  readonly onChange: (value: number) => void;
  readonly changed?: boolean;
}

/** An underlined number of a question. Enter or leaving it takes it; Escape brings back what stood there. */
export function AskedNumber({ label, text, parse, onChange, changed }: AskedNumberProps) {
  const id = useId();
  const [draft, setDraft] = useState<string | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const end = (): void => {
    setDraft(null);
    setFault(null);
  };
  const settle = (): void => {
    if (draft === null || draft === text) return end();
    const read = parse(draft);
    if (!read.ok) return setFault(read.message);
    end();
    onChange(read.value);
  };
  const onKey = (event: KeyboardEvent): void => {
    if (event.key === "Enter") settle();
    if (event.key === "Escape" && draft !== null) {
      event.stopPropagation();
      end();
    }
  };
  return (
    <>
      <input
        className={changed === true ? "asked asked-changed" : "asked"}
        aria-label={label}
        aria-invalid={fault !== null}
        aria-describedby={fault === null ? undefined : id}
        value={draft ?? text}
        onChange={(event) => {
          setDraft(event.target.value);
          setFault(null);
        }}
        onFocus={(event) => event.target.select()}
        onKeyDown={onKey}
        onBlur={settle}
      />
      {fault !== null && (
        <span id={id} className="asked-fault remedy" role="alert">
          {fault}
        </span>
      )}
    </>
  );
}
