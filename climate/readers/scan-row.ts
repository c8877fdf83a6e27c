/**
 * Reads the wanted fields of one row of comma-separated numbers straight from character codes, without making strings:
 * a typical-year file has 300,000 fields, of which 18 a row count.
 *
 * @param fieldSlot  for each field, the place in `out` that it fills, or -1 to skip it
 * @param out        one number per wanted field; NaN where the field is empty or no number
 * @returns how many fields the row has
 */
export function scanRow(
  text: string,
  from: number,
  to: number,
  fieldSlot: Int8Array,
  out: Float64Array,
  comma: number,
): number {
  let field = 0;
  let at = from;
  out.fill(NaN);
  while (at <= to) {
    let end = at;
    const slot = field < fieldSlot.length ? fieldSlot[field]! : -1;
    if (slot < 0) {
      while (end < to && text.charCodeAt(end) !== comma) end++;
    } else {
      // Mantissa digits and their decimal places; anything else falls to the slow path.
      let mantissa = 0;
      let digits = 0;
      let decimals = -1;
      let negative = false;
      let plain = true;
      while (end < to) {
        const code = text.charCodeAt(end);
        if (code === comma) break;
        if (code >= 48 && code <= 57) {
          mantissa = mantissa * 10 + (code - 48);
          digits++;
          if (decimals >= 0) decimals++;
        } else if (code === 46 && decimals < 0) decimals = 0;
        else if (code === 45 && end === at) negative = true;
        else plain = false;
        end++;
      }
      if (plain && digits > 0 && digits <= 15) {
        const size = decimals > 0 ? mantissa / powersOfTen[decimals]! : mantissa;
        out[slot] = negative ? -size : size;
      } else if (end > at) out[slot] = numberOf(text.slice(at, end));
    }
    field++;
    at = end + 1;
  }
  return field;
}

/** Exact up to 10^22, so mantissa/power rounds once, as a decimal literal does. */
const powersOfTen = Float64Array.from({ length: 16 }, (_, k) => Number(`1e${k}`));

const decimalNumber = /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d{1,3})?$/;

/** A decimal number, NaN for everything else: no hexadecimal, no "Infinity", no empty text. */
export function numberOf(text: string): number {
  const trimmed = text.trim();
  return decimalNumber.test(trimmed) ? Number(trimmed) : NaN;
}
