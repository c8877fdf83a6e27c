/** Books and editions whose tables the program carries. IRC: dwellings; IBC: other buildings. */
export const editions = [
  "IRC 2015",
  "IRC 2018",
  "IRC 2021",
  "IRC 2024",
  "IBC 2015",
  "IBC 2018",
  "IBC 2021",
  "IBC 2024",
] as const;
export type Edition = (typeof editions)[number];

/** A climate zone of the code: thermal number and moisture letter. */
export interface Zone {
  readonly number: number;
  readonly letter: "A" | "B" | "C" | "";
  readonly marine4: boolean;
  readonly text: string;
}

/** Reads "6A", "4C", "8"; null where that is no zone. */
export function zoneOf(text: string): Zone | null {
  const match = /^([0-8])([ABC]?)$/.exec(text);
  if (!match) return null;
  const letter = (match[2] ?? "") as Zone["letter"];
  return { number: Number(match[1]), letter, marine4: match[1] === "4" && letter === "C", text };
}

export const yearOf = (edition: Edition): number => Number(edition.slice(4));
export const isIBC = (edition: Edition): boolean => edition.startsWith("IBC");

/** Where each rule stands, by edition. */
export interface Sections {
  readonly classes: string;
  readonly permitted: string;
  readonly class3: string;
  readonly withFoam: string;
  readonly noRetarder: string;
  readonly wallR: string;
  readonly wallU: string;
  readonly airTightness: string;
}
const sections: Readonly<Record<Edition, Sections>> = {
  "IRC 2015": {
    classes: "section R202",
    permitted: "section R702.7",
    class3: "Table R702.7.1",
    withFoam: "none",
    noRetarder: "none",
    wallR: "Table N1102.1.2",
    wallU: "Table N1102.1.4",
    airTightness: "section N1102.4.1.2",
  },
  "IRC 2018": {
    classes: "section R202",
    permitted: "section R702.7",
    class3: "Table R702.7.1",
    withFoam: "none",
    noRetarder: "none",
    wallR: "Table N1102.1.2",
    wallU: "Table N1102.1.4",
    airTightness: "section N1102.4.1.2",
  },
  "IRC 2021": {
    classes: "Table R702.7(1)",
    permitted: "Table R702.7(2)",
    class3: "Table R702.7(3)",
    withFoam: "Table R702.7(4)",
    noRetarder: "none",
    wallR: "Table N1102.1.3",
    wallU: "Table N1102.1.2",
    airTightness: "section N1102.4.1.3",
  },
  "IRC 2024": {
    classes: "section R202",
    permitted: "Table R702.7(2)",
    class3: "Table R702.7(3)",
    withFoam: "Table R702.7(4)",
    noRetarder: "Table R702.7(5)",
    wallR: "Table N1102.1.3",
    wallU: "Table N1102.1.2",
    airTightness: "section N1102.5.1.3",
  },
  "IBC 2015": {
    classes: "section 202",
    permitted: "section 1405.3.1",
    class3: "Table 1405.3.2",
    withFoam: "none",
    noRetarder: "none",
    wallR: "Table R402.1.2 of the IECC",
    wallU: "Table R402.1.4 of the IECC",
    airTightness: "section R402.4 of the IECC",
  },
  "IBC 2018": {
    classes: "section 202",
    permitted: "section 1404.3.1",
    class3: "Table 1404.3.2",
    withFoam: "none",
    noRetarder: "none",
    wallR: "Table R402.1.2 of the IECC",
    wallU: "Table R402.1.4 of the IECC",
    airTightness: "section R402.4 of the IECC",
  },
  "IBC 2021": {
    classes: "Table 1404.3(1)",
    permitted: "Table 1404.3(2)",
    class3: "Table 1404.3(3)",
    withFoam: "Table 1404.3(4)",
    noRetarder: "none",
    wallR: "Table R402.1.3 of the IECC",
    wallU: "Table R402.1.2 of the IECC",
    airTightness: "section R402.4.1.3 of the IECC",
  },
  "IBC 2024": {
    classes: "section 202",
    permitted: "Table 1404.3(2)",
    class3: "Table 1404.3(3)",
    withFoam: "Table 1404.3(4)",
    noRetarder: "Table 1404.3(5)",
    wallR: "Table R402.1.3 of the IECC",
    wallU: "Table R402.1.2 of the IECC",
    airTightness: "section R402.5.1.3 of the IECC",
  },
};
export const sectionsOf = (edition: Edition): Sections => sections[edition];
