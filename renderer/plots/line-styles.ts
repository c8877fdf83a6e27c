import type { ChartTokens } from "./tokens.ts";

/** What a line on a chart stands for. Each has a colour, a dash and a word, so that no one of the three is needed alone. */
export type LineRole =
  | "whole"
  | "temperature"
  | "innerFace"
  | "outerFace"
  | "dewPoint"
  | "optionA"
  | "optionB"
  | "optionC"
  | "optionD"
  | "limit";

export interface LineStyle {
  readonly color: string;
  readonly width: number;
  readonly dash: string;
}

export function lineStyle(role: LineRole, tokens: ChartTokens): LineStyle {
  switch (role) {
    case "whole":
    case "temperature":
      return { color: tokens.ink, width: 2.2, dash: "solid" };
    case "innerFace":
      return { color: tokens.inside, width: 1.8, dash: "2px,2.5px" };
    case "outerFace":
      return { color: tokens.outside, width: 1.6, dash: "9px,4px" };
    case "dewPoint":
      return { color: tokens.airLine || tokens.outside, width: 2.2, dash: "7px,3px" };
    case "optionA":
      return { color: tokens.ink, width: 1.8, dash: "8px,3px" };
    case "optionB":
      return { color: tokens.ink, width: 2.4, dash: "solid" };
    case "optionC":
      return { color: tokens.ink, width: 1.8, dash: "10px,3px,2px,3px" };
    case "optionD":
      return { color: tokens.ink, width: 1.8, dash: "3px,3px" };
    case "limit":
      return { color: tokens.ink2, width: 1.1, dash: "2px,3px" };
  }
}
