import { useId, useState, type KeyboardEvent } from "react";
import type { Parsed } from "../units/index.ts";
import "./fields.css";

interface QuantityFieldProps {
  readonly label: string;
  /** The value as it stands in the field. */
  readonly text: string;
  readonly parse: (text: string) => Parsed;
  readonly onChange: (value: number) => void;
  /** What is usual, and where that comes from. */
  readonly note?: string | undefined;
  readonly width?: number;
}

/** A number with its unit, written by hand. What cannot be read is said beside the field; Escape brings back what stood there. */
export function QuantityField({ label, text, parse, onChange, note, width = 84 }: QuantityFieldProps) {
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
    <div className="form-row">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        className="field"
        style={{ width }}
        value={draft ?? text}
        aria-invalid={fault !== null}
        aria-describedby={note || fault ? `${id}-note` : undefined}
        onChange={(event) => {
          setDraft(event.target.value);
          setFault(null);
        }}
        onKeyDown={onKey}
        onBlur={settle}
      />
      {(fault ?? note) && (
        <span
          id={`${id}-note`}
          className={fault ? "form-note remedy" : "form-note note"}
          role={fault ? "alert" : undefined}
        >
          {fault ?? note}
        </span>
      )}
    </div>
  );
}
