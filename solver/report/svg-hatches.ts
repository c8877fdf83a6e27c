import type { Hatch } from "./report.ts";

/** Ink of hatches and outlines on white paper. */
export const ink = "#1C222B";
const hatchInk = "#5B626B";

const n = (value: number): string => String(Math.round(value * 100) / 100);
const line = (x1: number, y1: number, x2: number, y2: number): string => `M${n(x1)} ${n(y1)}L${n(x2)} ${n(y2)}`;
const stroked = (path: string): string =>
  path === "" ? "" : `<path d="${path}" fill="none" stroke="${hatchInk}" stroke-width=".7"/>`;
const dot = (x: number, y: number, r: number): string =>
  `<circle cx="${n(x)}" cy="${n(y)}" r="${n(r)}" fill="${hatchInk}"/>`;

/** Positions 0..1 that look strewn and are always the same. */
const strewn = (index: number): readonly [number, number] => [(index * 0.6180339887) % 1, (index * 0.7548776662) % 1];

function diagonals(x: number, y: number, w: number, h: number, gap: number, rising: number): string {
  let path = "";
  const run = h / rising;
  for (let from = -run; from < w; from += gap) {
    const a = Math.max(0, -from / run);
    const b = Math.min(1, (w - from) / run);
    if (b > a) path += line(x + from + a * run, y + h - a * h, x + from + b * run, y + h - b * h);
  }
  return path;
}

const mirrored = (path: string, x: number, w: number): string =>
  path.replace(/([ML])([\d.-]+) /g, (_, letter: string, value: string) => `${letter}${n(2 * x + w - Number(value))} `);

/** Vector hatch of a layer in a box, by drafting habit; drawn as lines so that it prints at any size. */
export function hatchSvg(hatch: Hatch, x: number, y: number, w: number, h: number): string {
  switch (hatch) {
    case "lumberThrough":
      return stroked(line(x, y, x + w, y + h) + line(x, y + h, x + w, y));
    case "lumberAcross": {
      let arcs = "";
      for (let r = h * 0.35; r < h * 1.6; r += Math.max(4, h * 0.22))
        arcs += `M${n(x + Math.max(0, w / 2 - r))} ${n(y + h)}Q${n(x + w / 2)} ${n(y + h - r)} ${n(x + Math.min(w, w / 2 + r))} ${n(y + h)}`;
      return stroked(arcs);
    }
    case "strandBoard": {
      let dashes = "";
      for (let row = 0; row * 2.6 + 1.6 < h; row += 1)
        for (let at = (row % 3) * 4 + 2; at < w - 6; at += 12)
          dashes += line(x + at, y + row * 2.6 + 1.6, x + at + 6, y + row * 2.6 + 1.6);
      return stroked(dashes);
    }
    case "plywood":
      return stroked([1, 2, 3, 4].map((each) => line(x, y + (h * each) / 5, x + w, y + (h * each) / 5)).join(""));
    case "woodBoard":
      return stroked(line(x, y + h / 3, x + w, y + h / 3) + line(x + w * 0.2, y + (2 * h) / 3, x + w, y + (2 * h) / 3));
    case "fibreFill": {
      const loops = Math.max(3, Math.round(w / Math.max(10, h * 0.42)));
      const step = w / loops;
      let path = `M${n(x)} ${n(y + h * 0.5)}`;
      for (let loop = 0; loop < loops; loop += 1) {
        const from = x + loop * step;
        path += `C${n(from)} ${n(y - h * 0.12)} ${n(from + step * 0.5)} ${n(y - h * 0.12)} ${n(from + step * 0.5)} ${n(y + h * 0.5)}`;
        path += `C${n(from + step * 0.5)} ${n(y + h * 1.12)} ${n(from + step)} ${n(y + h * 1.12)} ${n(from + step)} ${n(y + h * 0.5)}`;
      }
      return stroked(path);
    }
    case "fibreBoard": {
      let loops = "";
      for (let row = 0; row * 6 + 5 <= h; row += 1)
        for (let at = (row % 2) * 4 + 2; at < w - 6; at += 8)
          loops += `M${n(x + at)} ${n(y + row * 6 + 4)}q3 -5 4 -1q-3 4 -4 1`;
      return stroked(loops);
    }
    case "rigidFoam": {
      const steep = Math.tan((58 * Math.PI) / 180);
      const rising = diagonals(x, y, w, h, 9, steep);
      return stroked(rising + mirrored(rising, x, w));
    }
    case "sprayedFoam":
      return Array.from({ length: Math.min(220, Math.round((w * h) / 60)) }, (_, index) => {
        const [a, b] = strewn(index + 1);
        const r = 1.2 + ((index * 7) % 5) * 0.45;
        return `<circle cx="${n(x + r + a * (w - 2 * r))}" cy="${n(y + r + b * Math.max(0, h - 2 * r))}" r="${n(Math.min(r, h / 2))}" fill="none" stroke="${hatchInk}" stroke-width=".6"/>`;
      }).join("");
    case "gypsum":
      return Array.from({ length: Math.min(160, Math.round((w * h) / 40)) }, (_, index) => {
        const [a, b] = strewn(index + 1);
        return dot(x + 1 + a * (w - 2), y + 1 + b * Math.max(0, h - 2), 0.55);
      }).join("");
    case "fibreCement":
      return stroked(diagonals(x, y, w, h, 3.4, 1));
    case "brick": {
      const one = diagonals(x, y, w, h, 9, 1);
      return stroked(one + diagonals(x + 2.4, y, w - 2.4, h, 9, 1));
    }
    case "concrete":
      return Array.from({ length: Math.min(120, Math.round((w * h) / 70)) }, (_, index) => {
        const [a, b] = strewn(index + 1);
        const cx = x + 2 + a * (w - 4);
        const cy = y + 2 + b * Math.max(0, h - 4);
        return index % 5 === 0
          ? `<path d="M${n(cx)} ${n(cy - 1.8)}l1.8 3.2h-3.6z" fill="none" stroke="${hatchInk}" stroke-width=".6"/>`
          : dot(cx, cy, 0.5);
      }).join("");
    case "metal":
      return `<rect x="${n(x)}" y="${n(y)}" width="${n(w)}" height="${n(h)}" fill="${hatchInk}"/>`;
    case "membrane":
      return `<path d="${line(x, y + h / 2, x + w, y + h / 2)}" stroke="${ink}" stroke-width="1.6" stroke-dasharray="7 3"/>`;
    case "air":
    case "plain":
      return "";
  }
}
