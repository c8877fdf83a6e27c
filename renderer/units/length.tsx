import type { Units } from "../state/index.ts";
import { lengthFigure } from "./format.ts";

/** Splits "2 1/4" so that only the fraction is set as one. */
export function fractionParts(text: string): { before: string; fraction: string } {
  const parts = /^(.*?)(\d+\/\d+)$/.exec(text);
  return parts ? { before: parts[1]!.trim(), fraction: parts[2]! } : { before: text, fraction: "" };
}

/** A length with a real inch fraction; the unit stands in the head of the column or after it. */
export function Length({ length_m, units }: { length_m: number; units: Units }) {
  return <Fraction text={lengthFigure(length_m, units)} />;
}

export function Fraction({ text }: { text: string }) {
  const { before, fraction } = fractionParts(text);
  return (
    <>
      {before}
      {fraction && (
        <>
          {before && " "}
          <span className="frac">{fraction}</span>
        </>
      )}
    </>
  );
}

/** A figure and its unit stay on one line. */
export const unbroken = (text: string): string =>
  text.replace(
    /(\d) (?=(?:°[CF]|%|points?\b|in\.|mm\b|perms?\b|gal\b|oz\b|cups?\b|kg\b|days?\b|hours?\b|degC\b))/g,
    "$1\u00a0",
  );

/** A sentence in which every inch fraction ("2 1/4 in.") is set as one. */
export function Sentence({ text }: { text: string }) {
  return (
    <>
      {unbroken(text)
        .split(/(?<![\d/])(\d{1,2}\/(?:2|4|8|16|32))(?!\d)/)
        .map((part, index) =>
          index % 2 === 1 ? (
            <span key={index} className="frac">
              {part}
            </span>
          ) : (
            part
          ),
        )}
    </>
  );
}
