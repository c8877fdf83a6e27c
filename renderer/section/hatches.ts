import type { HatchKind } from "./hatch-kind.ts";

/** A cut layer on paper [px]; `unit` is 1 at a scale of 1:2 and shrinks with the drawing. */
export interface CutRect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly unit: number;
}

/** Strokes and solid parts of a hatch, as SVG path data. */
export interface Hatch {
  readonly stroke: string;
  readonly solid: string;
}

const n = (value: number): string => value.toFixed(1);

/** Repeatable scatter: the same wall is drawn the same way each time. */
function scatter(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
}

const spacing = (rect: CutRect, atHalfScale: number, least: number): number => Math.max(least, atHalfScale * rect.unit);

function slanted(rect: CutRect, step: number, slope: number, offset = 0): string {
  const { x, y, width, height } = rect;
  const run = height / slope;
  // Counted from the paper's edge, so that the hatch runs on from core to core.
  const first = Math.floor((x - Math.abs(run) - step) / step) * step - x + offset;
  let path = "";
  for (let start = first; start < width + Math.abs(run) + step; start += step) {
    path += `M${n(x + start)} ${n(y + height)}L${n(x + start + run)} ${n(y)}`;
  }
  return path;
}

function growthArcs(rect: CutRect): string {
  const { x, y, width, height } = rect;
  const step = spacing(rect, 9, 5);
  const centre = x + width * 0.46;
  const pith = y + height + height * 0.5 + width * 0.35;
  let path = "";
  for (let radius = step; radius < pith - y + width; radius += step) {
    path += `M${n(centre - radius * 1.6)} ${n(pith)}A${n(radius * 1.6)} ${n(radius)} 0 0 1 ${n(centre + radius * 1.6)} ${n(pith)}`;
  }
  return path;
}

function fibreLoops(rect: CutRect, period: number): string {
  const { x, y, width, height } = rect;
  const radius = Math.min(period * 0.45, height / 2);
  const [top, bottom, middle] = [y + radius, y + height - radius, y + height / 2];
  const at = (centre: number, share: number): string => n(centre + share * period);
  let path = `M${n(x - period * 0.55)} ${n(bottom)}`;
  for (let centre = x - period * 0.5; centre < x + width + period; centre += period) {
    path +=
      `M${at(centre, -0.05)} ${n(bottom)}C${at(centre, -0.05)} ${n(middle)} ${at(centre, -0.45)} ${n(middle)} ${at(centre, -0.45)} ${n(top)}` +
      `A${n(period * 0.45)} ${n(radius)} 0 0 1 ${at(centre, 0.45)} ${n(top)}` +
      `C${at(centre, 0.45)} ${n(middle)} ${at(centre, 0.05)} ${n(middle)} ${at(centre, 0.05)} ${n(bottom)}` +
      `A${n(period * 0.45)} ${n(radius)} 0 0 0 ${at(centre, 0.95)} ${n(bottom)}`;
  }
  return path;
}

function loopRows(rect: CutRect): string {
  const rowHeight = Math.max(6, 13 * rect.unit);
  const rows = Math.max(1, Math.round(rect.height / rowHeight));
  const height = rect.height / rows;
  return Array.from({ length: rows }, (_, row) =>
    fibreLoops({ ...rect, x: rect.x - (row % 2) * 4, y: rect.y + row * height, height }, Math.max(5, height * 0.7)),
  ).join("");
}

const circle = (x: number, y: number, radius: number): string =>
  `M${n(x - radius)} ${n(y)}a${n(radius)} ${n(radius)} 0 1 0 ${n(2 * radius)} 0a${n(radius)} ${n(radius)} 0 1 0 ${n(-2 * radius)} 0`;

function bubbles(rect: CutRect): string {
  const random = scatter(7);
  const kept: { x: number; y: number; radius: number }[] = [];
  const wanted = Math.min(420, (rect.width * rect.height) / (90 * Math.max(0.3, rect.unit)));
  for (let attempt = 0; attempt < wanted * 4 && kept.length < wanted; attempt++) {
    const radius = Math.max(1.2, (1.6 + 5.4 * random() ** 2) * Math.max(0.55, rect.unit));
    const x = rect.x + random() * rect.width;
    const y = rect.y + random() * rect.height;
    if (kept.every((other) => Math.hypot(other.x - x, other.y - y) > other.radius + radius))
      kept.push({ x, y, radius });
  }
  return kept.map(({ x, y, radius }) => circle(x, y, radius)).join("");
}

function dots(rect: CutRect, areaEach: number, radius: number): string {
  const random = scatter(11);
  const count = Math.min(600, Math.max(3, (rect.width * rect.height) / areaEach));
  let path = "";
  for (let index = 0; index < count; index++) {
    path += circle(rect.x + random() * rect.width, rect.y + random() * rect.height, radius);
  }
  return path;
}

function stones(rect: CutRect): string {
  const random = scatter(23);
  const count = Math.min(120, Math.max(2, (rect.width * rect.height) / 520));
  let path = "";
  for (let index = 0; index < count; index++) {
    const [x, y, size] = [rect.x + random() * rect.width, rect.y + random() * rect.height, 3 + 3 * random()];
    const turn = random() * 2;
    const corner = (third: number): string =>
      `${n(x + size * Math.cos(turn + third * 2.09))} ${n(y + size * Math.sin(turn + third * 2.09))}`;
    path += `M${corner(0)}L${corner(1)}L${corner(2)}Z`;
  }
  return path;
}

function strands(rect: CutRect): string {
  const random = scatter(3);
  const gap = Math.max(2.4, 4.6 * rect.unit);
  let path = "";
  for (let y = rect.y + gap * 0.7; y < rect.y + rect.height - 0.5; y += gap) {
    for (let x = rect.x - random() * 16; x < rect.x + rect.width;) {
      const length = (9 + 13 * random()) * Math.max(0.6, rect.unit);
      path += `M${n(x)} ${n(y + random())}l${n(length)} ${n((random() - 0.5) * gap * 0.7)}`;
      x += length + 3 + 7 * random();
    }
  }
  return path;
}

function plies(rect: CutRect, count: number): string {
  return Array.from({ length: count }, (_, line) => {
    const y = rect.y + (rect.height * (line + 1)) / (count + 1);
    return `M${n(rect.x)} ${n(y)}H${n(rect.x + rect.width)}`;
  }).join("");
}

const crossed = ({ x, y, width, height }: CutRect): string =>
  `M${n(x)} ${n(y)}L${n(x + width)} ${n(y + height)}M${n(x + width)} ${n(y)}L${n(x)} ${n(y + height)}`;

const box = ({ x, y, width, height }: CutRect): string => `M${n(x)} ${n(y)}h${n(width)}v${n(height)}h${n(-width)}Z`;

/** tan 58 degrees: the lozenges of rigid foam. */
const foamSlope = 1.6;

/** The strokes of a hatch; they run past the rectangle and are to be clipped to it. */
export function hatchPaths(kind: HatchKind, rect: CutRect): Hatch {
  switch (kind) {
    case "lumberThrough":
      return { stroke: crossed(rect), solid: "" };
    case "lumberAcross":
      return { stroke: growthArcs(rect), solid: "" };
    case "woodBoard":
      return { stroke: plies(rect, Math.max(1, Math.floor(rect.height / 5))), solid: "" };
    case "strandBoard":
      return { stroke: strands(rect), solid: "" };
    case "plywood":
      return { stroke: plies(rect, 4), solid: "" };
    case "fibreFill":
      return {
        stroke: fibreLoops(rect, Math.max(9, Math.min(rect.height * 0.42, 31 * Math.max(0.5, rect.unit)))),
        solid: "",
      };
    case "fibreBoard":
      return { stroke: loopRows(rect), solid: "" };
    case "rigidFoam": {
      const step = spacing(rect, 21, 9);
      return { stroke: slanted(rect, step, foamSlope) + slanted(rect, step, -foamSlope), solid: "" };
    }
    case "sprayedFoam":
      return { stroke: bubbles(rect), solid: "" };
    case "gypsum":
      return { stroke: "", solid: dots(rect, 90 * Math.max(0.5, rect.unit), 0.75) };
    case "fibreCement":
      return { stroke: slanted(rect, spacing(rect, 5, 3.5), 1), solid: "" };
    case "brick": {
      const step = spacing(rect, 22, 11);
      return { stroke: slanted(rect, step, 1) + slanted(rect, step, 1, step * 0.28), solid: "" };
    }
    case "concrete":
      return { stroke: stones(rect), solid: dots(rect, 150, 0.7) };
    case "metal":
      return { stroke: "", solid: box(rect) };
    case "membrane":
    case "air":
    case "plain":
      return { stroke: "", solid: "" };
  }
}
