/**
 * sRGB and CIELAB, so that colour scales can be interpolated where equal steps look equal.
 * Source: IEC 61966-2-1:1999 (sRGB), CIE 015:2018 (L*a*b*), white point D65, 2 degree observer.
 */
export type Lab = readonly [lightness: number, a: number, b: number];

const white = [0.95047, 1, 1.08883] as const;
const epsilon = 216 / 24389;
const kappa = 24389 / 27;

const linear = (channel: number): number => (channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4);
const encoded = (light: number): number => (light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055);
const curve = (t: number): number => (t > epsilon ? Math.cbrt(t) : (kappa * t + 16) / 116);
const uncurve = (f: number): number => (f ** 3 > epsilon ? f ** 3 : (116 * f - 16) / kappa);

/** CIELAB of a colour written "#RRGGBB". Throws RangeError on anything else. */
export function labOf(hex: string): Lab {
  const match = /^#?([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(hex.trim());
  if (!match) throw new RangeError(`colour must be written #RRGGBB, got "${hex}"`);
  const [r, g, b] = [1, 2, 3].map((part) => linear(parseInt(match[part]!, 16) / 255)) as [number, number, number];
  const x = curve((0.4124564 * r + 0.3575761 * g + 0.1804375 * b) / white[0]);
  const y = curve((0.2126729 * r + 0.7151522 * g + 0.072175 * b) / white[1]);
  const z = curve((0.0193339 * r + 0.119192 * g + 0.9503041 * b) / white[2]);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

/** "#rrggbb" of a CIELAB colour; channels outside sRGB are cut to its edge. */
export function hexOf([lightness, a, b]: Lab): string {
  const fy = (lightness + 16) / 116;
  const x = uncurve(fy + a / 500) * white[0];
  const y = uncurve(fy) * white[1];
  const z = uncurve(fy - b / 200) * white[2];
  const channels = [
    3.2404542 * x - 1.5371385 * y - 0.4985314 * z,
    -0.969266 * x + 1.8760108 * y + 0.041556 * z,
    0.0556434 * x - 0.2040259 * y + 1.0572252 * z,
  ];
  return `#${channels
    .map((light) =>
      Math.round(255 * Math.min(1, Math.max(0, encoded(light))))
        .toString(16)
        .padStart(2, "0"),
    )
    .join("")}`;
}

export const between = (from: Lab, to: Lab, t: number): Lab => [
  from[0] + (to[0] - from[0]) * t,
  from[1] + (to[1] - from[1]) * t,
  from[2] + (to[2] - from[2]) * t,
];
