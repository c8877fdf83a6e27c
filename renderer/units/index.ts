/** Units at the edge of the window: fields read them, labels write them; inside everything is SI. */
export * from "./format.ts";
export { inchText, tapeInches } from "./inch-fraction.ts";
export { Fraction, fractionParts, Length, Sentence } from "./length.tsx";

export { parseNumber, parseThickness, type Parsed } from "./parse-length.ts";
export { parseDistance, parsePlain, parseShare, parseTemperature } from "./parse-quantity.ts";
