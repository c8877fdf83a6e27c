/** Humidity from 40 to 100 % as a stain in paper, tea to aubergine: evenly spaced for the eye, and still a ramp in grey. */
const stops = [
  "#F5F2E9",
  "#E5D5B5",
  "#D1B08A",
  "#BD8E6E",
  "#A87260",
  "#955B59",
  "#7D4759",
  "#593653",
  "#302442",
] as const;
const driest = 0.4;

/** Paper colour of a humidity 0..1; the scale never rescales itself. */
export function stain(humidity: number): string {
  const share = Math.min(1, Math.max(0, (humidity - driest) / (1 - driest)));
  const place = share * (stops.length - 1);
  const low = Math.min(Math.floor(place), stops.length - 2);
  const mix = place - low;
  const channel = (hex: string, at: number): number => parseInt(hex.slice(at, at + 2), 16);
  const mixed = [1, 3, 5].map((at) =>
    Math.round(channel(stops[low]!, at) * (1 - mix) + channel(stops[low + 1]!, at) * mix),
  );
  return `#${mixed.map((value) => value.toString(16).padStart(2, "0")).join("")}`;
}

/** Ends of the scale in words, for the strip beside a map. */
export const stainEnds = ["40 %", "100 %"] as const;
