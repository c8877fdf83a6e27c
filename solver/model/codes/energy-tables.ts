import { yearOf, type Edition, type Zone } from "./edition.ts";

/** One way to meet the wood-frame wall row: cavity R and continuous R, inch-pound. */
export interface WallR {
  readonly cavity_R: number;
  readonly ci_R: number;
}
export interface EnergyRow {
  readonly words: string;
  readonly options: readonly WallR[];
  /** Assembly U, Btu/(h ft2 degF). */
  readonly U_IP: number;
  readonly note: string | null;
  readonly flag: string;
}

/** Reads "20+5" or "13". */
export function wallROf(text: string): WallR {
  const [cavity = 0, ci = 0] = text.split("+").map(Number);
  return { cavity_R: cavity, ci_R: ci };
}
export const wordsOfWallR = ({ cavity_R, ci_R }: WallR): string =>
  ci_R > 0 ? `${cavity_R}+${ci_R}` : String(cavity_R);

const row = (words: string, options: string, U_IP: number, flag: string, note: string | null = null): EnergyRow => ({
  words,
  options: options.split(" ").map(wallROf),
  U_IP,
  flag,
  note,
});

const seen2018 = "SEEN (2018-level tables in adopted state texts)";
const seen2021 = "SEEN (IRC 2021 Tables N1102.1.3 and N1102.1.2, adopted state texts)";
const seen2024 = "SEEN (IRC 2024 Tables N1102.1.3 and N1102.1.2, adopted federal text)";
/** The 2021 dwelling code prints 13+10 for zone 3, which belongs to a U of 0.045; the energy code of that year and the 2024 edition print 13+5. */
const slip2021 =
  "IRC 2021 prints 13+10 in this row in three adopted texts; the energy code of that year and the 2024 edition print 13+5, which is what the U of the row asks. 13+5 is accepted.";

/** Prescriptive wood-frame wall row of the energy chapter. Zone 0 exists from 2021. */
export function energyRow(edition: Edition, zone: Zone): EnergyRow | null {
  const year = yearOf(edition);
  const n = zone.number;
  if (year < 2021) {
    const flag = year < 2018 ? "MEMORY: taken to read as the 2018 edition" : seen2018;
    if (n === 0) return null;
    if (n <= 2) return row("1, 2", "13", 0.084, flag);
    if (n === 5 || zone.marine4) return row("5 and Marine 4", "20 13+5", 0.06, flag);
    if (n <= 4) return row(n === 3 ? "3" : "4 (not Marine)", "20 13+5", 0.06, flag);
    return row(n === 6 ? "6" : "7, 8", "20+5 13+10", 0.045, flag);
  }
  const flag = year === 2021 ? seen2021 : seen2024;
  if (n <= 2) return row("0, 1, 2", "13 0+10", 0.084, flag);
  if (n === 3) return row("3", "20 13+5 0+15", 0.06, flag, year === 2021 ? slip2021 : null);
  return row("4 to 8", "30 20+5 13+10 0+20", 0.045, flag);
}

/** Largest blower-door result [1/h at 50 Pa]. Sources: IRC 2021 N1102.4.1.3 and IRC 2024 N1102.5.1.3, adopted texts (SEEN); to 2018 SEEN second-hand, some states amend it. */
export function airTightnessLimit(edition: Edition, zone: Zone): { readonly ach50: number; readonly flag: string } {
  const year = yearOf(edition);
  if (year >= 2024) return { ach50: zone.number <= 2 ? 4 : zone.number <= 5 ? 3 : 2.5, flag: "SEEN" };
  return { ach50: zone.number <= 2 ? 5 : 3, flag: year >= 2021 ? "SEEN" : "SEEN second-hand; some states amend it" };
}

/** Least effective RSI of walls above grade without heat-recovery ventilation, by heating degree-days below 18 degC. Source: NBC Table 9.36.2.6.-A, as restated (SEEN). */
export const canadianWallRsi: readonly {
  readonly zone: string;
  readonly fromHdd: number;
  readonly rsi_m2KW: number;
}[] = [
  { zone: "4", fromHdd: 0, rsi_m2KW: 2.78 },
  { zone: "5", fromHdd: 3000, rsi_m2KW: 3.08 },
  { zone: "6", fromHdd: 4000, rsi_m2KW: 3.08 },
  { zone: "7A", fromHdd: 5000, rsi_m2KW: 3.08 },
  { zone: "7B", fromHdd: 6000, rsi_m2KW: 3.85 },
  { zone: "8", fromHdd: 7000, rsi_m2KW: 3.85 },
];
export function canadianRow(heatingDegreeDays18: number): (typeof canadianWallRsi)[number] {
  return [...canadianWallRsi].reverse().find((one) => heatingDegreeDays18 >= one.fromHdd) ?? canadianWallRsi[0]!;
}
