import { decidingFindings } from "../../../solver/index.ts";
import { everyKind } from "../parts/finding-words.ts";
import type { Criterion } from "./question-inputs.ts";

/** Words of a criterion after "so that", and the kinds of finding it asks to hold. */
export const criteria: readonly { readonly value: Criterion; readonly words: string }[] = [
  { value: "deciding", words: "the wall stays sound" },
  { value: "every", words: "every limit is kept, those that ask for a look too" },
  { value: "moisture", words: "the wood stays under its moisture limits" },
  { value: "mould", words: "no mould is seen" },
  { value: "thirtyDays", words: "the cold face stays under 80 % over 30 days" },
];

const wood = ["woodMoisture", "woodMoistureInnerFace", "woodMoistureElsewhere", "decay"];

/** Kinds of finding that a criterion asks to hold, those that occur in a wall among them. */
export function kindsOf(criterion: Criterion): readonly string[] {
  switch (criterion) {
    case "deciding":
      return decidingFindings;
    case "every":
      return everyKind;
    case "moisture":
      return wood;
    case "mould":
      return ["mouldIndex", "mouldIndexElsewhere"];
    case "thirtyDays":
      return ["thirtyDayHumidity"];
  }
}
