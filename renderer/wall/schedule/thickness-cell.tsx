import { useId, useRef, useState, type KeyboardEvent, type RefCallback } from "react";
import type { Units } from "../../state/index.ts";
import { Length, lengthEntry, lengthText, parseThickness } from "../../units/index.ts";

interface ThicknessCellProps {
  readonly thickness_m: number;
  readonly units: Units;
  readonly conductivity_WmK: number | null;
  /** "Thickness of layer 3, foam" */
  readonly label: string;
  readonly onChange: (thickness_m: number) => void;
  readonly cell: { readonly tabIndex: number; readonly "data-row": number; readonly "data-column": number };
  readonly onFault: (message: string | null) => void;
}

/** A thickness that reads as a figure and is written over in place: Enter or a digit begins, Enter ends, Escape leaves it. */
export function ThicknessCell(props: ThicknessCellProps) {
  const { thickness_m, units, conductivity_WmK, label, onChange, cell, onFault } = props;
  const [draft, setDraft] = useState<string | null>(null);
  const [wrong, setWrong] = useState(false);
  const hint = useId();
  const button = useRef<HTMLButtonElement>(null);
  const backToCell = useRef(false);

  const begin = (text: string): void => setDraft(text);
  const end = (): void => {
    setDraft(null);
    setWrong(false);
    onFault(null);
  };
  const settle = (): boolean => {
    if (draft === null) return true;
    // Looked at and left as it was: the figure is kept as it stands, not as it is rounded for reading.
    if (draft === lengthEntry(thickness_m, units)) {
      end();
      return true;
    }
    const read = parseThickness(draft, units, conductivity_WmK);
    if (!read.ok) {
      setWrong(true);
      onFault(read.message);
      return false;
    }
    end();
    if (Math.abs(read.value - thickness_m) > 1e-7) onChange(read.value);
    return true;
  };
  const onFieldKey = (event: KeyboardEvent): void => {
    if (event.key !== "Enter" && event.key !== "Escape") return;
    event.preventDefault();
    event.stopPropagation();
    backToCell.current = true;
    if (event.key === "Escape") end();
    else if (!settle()) backToCell.current = false;
  };
  const holdButton: RefCallback<HTMLButtonElement> = (element) => {
    button.current = element;
    if (element && backToCell.current) {
      backToCell.current = false;
      element.focus();
    }
  };

  if (draft === null) {
    return (
      <button
        {...cell}
        ref={holdButton}
        type="button"
        className="cell-button cell-thickness"
        aria-label={`${label}: ${lengthText(thickness_m, units)}`}
        onClick={() => begin(lengthEntry(thickness_m, units))}
        onKeyDown={(event) => {
          if (/^[\d.,rR]$/.test(event.key) && !event.ctrlKey && !event.metaKey && !event.altKey) {
            event.preventDefault();
            event.stopPropagation();
            begin(event.key);
          }
        }}
      >
        <Length length_m={thickness_m} units={units} />
      </button>
    );
  }
  return (
    <>
      <input
        {...cell}
        className="field cell-field"
        aria-label={label}
        aria-invalid={wrong}
        aria-describedby={hint}
        autoFocus
        value={draft}
        onFocus={(event) => {
          if (event.target.value.length > 1) event.target.select();
        }}
        onChange={(event) => {
          setDraft(event.target.value);
          if (wrong) {
            setWrong(false);
            onFault(null);
          }
        }}
        onKeyDown={onFieldKey}
        onBlur={() => {
          if (!settle()) end();
        }}
      />
      <span id={hint} className="visually-hidden">
        Such as 2 1/4 in, 50 mm or R-10
      </span>
    </>
  );
}
