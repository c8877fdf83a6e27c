import { useState, type KeyboardEvent } from "react";
import "./fields.css";

interface WrittenFieldProps {
  readonly label: string;
  readonly text: string;
  /** Takes what was written, or says why it cannot. */
  readonly onWrite: (text: string) => string | null;
  readonly width: number;
  readonly align?: "left" | "right";
}

/** A line to write on inside a table or a sentence. Enter or leaving it takes the text; Escape brings back what stood there. */
export function WrittenField({ label, text, onWrite, width, align = "left" }: WrittenFieldProps) {
  const [draft, setDraft] = useState<string | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const end = (): void => {
    setDraft(null);
    setFault(null);
  };
  const settle = (): void => {
    if (draft === null || draft === text) return end();
    const refused = onWrite(draft);
    if (refused === null) end();
    else setFault(refused);
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
        className="field written-field"
        style={{ width, textAlign: align }}
        aria-label={label}
        aria-invalid={fault !== null}
        value={draft ?? text}
        onChange={(event) => {
          setDraft(event.target.value);
          setFault(null);
        }}
        onKeyDown={onKey}
        onBlur={settle}
      />
      {fault && (
        <span className="remedy written-fault" role="alert">
          {fault}
        </span>
      )}
    </>
  );
}
