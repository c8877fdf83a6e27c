import { metrePerInch } from "../../solver/index.ts";

/** Inches as a tape reads them: whole inches and a fraction in lowest terms; null numerator where there is no fraction. */
export interface TapeInches {
  readonly whole: number;
  readonly numerator: number;
  readonly denominator: number;
}

const ticks = 16;
/** How far a length may lie from a tick and still be read as that tick [in]. */
const reading_in = 1 / 64;

/** A length to the sixteenth; null where it lies between the ticks. */
export function tapeInches(length_m: number): TapeInches | null {
  const inches = length_m / metrePerInch;
  const sixteenths = Math.round(inches * ticks);
  if (sixteenths < 1 || Math.abs(inches - sixteenths / ticks) > reading_in) return null;
  const whole = Math.floor(sixteenths / ticks);
  let numerator = sixteenths % ticks;
  let denominator = ticks;
  while (numerator > 0 && numerator % 2 === 0) {
    numerator /= 2;
    denominator /= 2;
  }
  return { whole, numerator, denominator };
}

/** "2 1/4", "9 3/4", or decimals where no tick is near. No unit. */
export function inchText(length_m: number): string {
  const tape = tapeInches(length_m);
  if (!tape) return (length_m / metrePerInch).toFixed(2);
  if (tape.numerator === 0) return String(tape.whole);
  const fraction = `${tape.numerator}/${tape.denominator}`;
  return tape.whole === 0 ? fraction : `${tape.whole} ${fraction}`;
}
