import { escapeHtml } from "./escape-html.ts";
import { inSentence } from "./layer-words.ts";
import type { DrawnWall } from "./report.ts";
import { stain } from "./stain-scale.ts";
import { hatchSvg, ink } from "./svg-hatches.ts";

const outsideInk = "#17697A";
const insideInk = "#8F5408";
const secondInk = "#4A515B";
const n = (value: number): string => String(Math.round(value * 100) / 100);

/** Widths and heights that the setting of the client's sheet counts with [px]. */
export const drawing = { core: 186, leader: 26, airLabel: 22, noteLine: 18, mark: 32 } as const;
/** Thinnest layer that is still seen; sheets are drawn thicker than they are. */
const leastDrawn = 3.2;

/** Millimetres on paper of a metre of wall at 1:`scale`, in px of 96 to the inch. */
export const pxPerMetre = (scale: number): number => (1000 / scale) * (96 / 25.4);

const heightsOf = (wall: DrawnWall, scale: number): number[] =>
  wall.layers.map((layer) => Math.max(leastDrawn, layer.thickness_m * pxPerMetre(scale)));

export const wallHeight = (wall: DrawnWall, scale: number): number =>
  heightsOf(wall, scale).reduce((sum, each) => sum + each, 0);

export interface SectionDress {
  readonly scale: number;
  readonly width: number;
  readonly height: number;
  /** Lines beside the mark, already broken. */
  readonly note: readonly string[];
  /** A measuring bar beside the section: in millimetres or inches; null: none. */
  readonly bar: "mm" | "in" | null;
}

/** Section outside at the top, to scale, standing on the drawing's foot, with the one temperature beside the marked face. */
export function sectionSvg(wall: DrawnWall, { scale, width, height, note, bar }: SectionDress): string {
  const { core, leader, airLabel, noteLine, mark } = drawing;
  const heights = heightsOf(wall, scale);
  const total = heights.reduce((sum, each) => sum + each, 0);
  const top = height - total - airLabel;
  let y = top;
  let drawn = "";
  let marked = top;
  wall.layers.forEach((layer, index) => {
    const h = heights[index]!;
    drawn +=
      layer.stain === null
        ? hatchSvg(layer.hatch, 0, y, core, h)
        : `<rect x="0" y="${n(y)}" width="${core}" height="${n(h)}" fill="${stain(layer.stain)}"/>`;
    drawn += `<path d="M0 ${n(y)}H${core}" stroke="${ink}" stroke-width=".8"/>`;
    y += h;
    if (index === wall.marked) marked = y;
  });
  const words = core + leader + 6;
  const wordsEnd = height - (bar === null ? 8 : 34);
  const first = Math.max(mark, Math.min(marked, wordsEnd - note.length * noteLine));
  const name = inSentence(wall.layers[wall.marked]!.name);
  const label = `${wall.title}: ${wall.layers.map((layer) => layer.name).join(", ")}, outside first. ${wall.mark} ${wall.markNote} at the inner face of the ${name}.`;
  return `<svg viewBox="0 0 ${n(width)} ${n(height)}" width="${n(width)}" height="${n(height)}" role="img" aria-label="${escapeHtml(label)}">
<text x="0" y="${n(top - 7)}" class="air" fill="${outsideInk}">${escapeHtml(wall.outside)}</text>
${drawn}<rect x=".75" y="${n(top)}" width="${core - 1.5}" height="${n(total)}" fill="none" stroke="${ink}" stroke-width="1.5"/>
<text x="0" y="${n(height - 5)}" class="air" fill="${insideInk}">${escapeHtml(wall.inside)}</text>
<circle cx="${core}" cy="${n(marked)}" r="3.4" fill="${ink}"/><path d="M${core} ${n(marked)}L${core + leader} ${n(first - 8)}" fill="none" stroke="${ink}"/>
<text x="${words}" y="${n(first)}" class="mark" fill="${ink}">${escapeHtml(wall.mark)}</text>
${note
  .map(
    (line, row) =>
      `<text x="${words}" y="${n(first + (row + 1) * noteLine)}" class="mark-note" fill="${ink}">${escapeHtml(line)}</text>`,
  )
  .join(
    "",
  )}${bar === null ? "" : `<g transform="translate(${words} ${n(height - 25)})">${measuringBar(scale, bar)}</g>`}
</svg>`;
}

/** A bar of the drawing's own scale, so that a copy made larger or smaller still tells. */
function measuringBar(scale: number, unit: "mm" | "in"): string {
  const lengths = unit === "mm" ? [0, 0.05, 0.1] : [0, 0.0508, 0.1016];
  const px = pxPerMetre(scale);
  const end = lengths[2]! * px;
  const ticks = lengths
    .map((length, index) => {
      const words = unit === "mm" ? String(length * 1000) : String(Math.round(length / 0.0254));
      const last = index === lengths.length - 1;
      return `<path d="M${n(length * px)} 1v6" stroke="${ink}"/><text x="${n(length * px)}" y="20" class="tick" text-anchor="${index === 0 ? "start" : "middle"}" fill="${secondInk}">${words}${last ? ` ${unit === "mm" ? "mm" : "in."}` : ""}</text>`;
    })
    .join("");
  return `<path d="M0 4H${n(end)}" stroke="${ink}" stroke-width="1.5"/>${ticks}<text x="${n(end + 30)}" y="8" class="tick" fill="${secondInk}">1:${scale}</text>`;
}

/** Cups filled in halves; a row holds twelve, more are said in words. */
export function cupsSvg(cups: number, width: number): string {
  const shown = Math.min(12, cups);
  const whole = Math.floor(shown);
  const items = Array.from({ length: Math.ceil(shown) }, (_, index) => {
    const x = index * 28;
    const outline = `M${x + 0.5} .5L${x + 3.5} 23H${x + 17}L${x + 20} .5`;
    const filling =
      index < whole
        ? `M${x + 1} 4L${x + 3.5} 23H${x + 17}L${x + 19.5} 4Z`
        : `M${x + 2.2} 13L${x + 3.5} 23H${x + 17}L${x + 18.3} 13Z`;
    return `<path d="${filling}" fill="#7D4759"/><path d="${outline}" fill="none" stroke="${ink}"/>`;
  }).join("");
  const more = cups > 12 ? `<text x="342" y="18" class="mark-note" fill="${ink}">and ${n(cups - 12)} more</text>` : "";
  return `<svg viewBox="0 0 ${n(width)} 24" width="${n(width)}" height="24" role="img" aria-label="${n(cups)} cups of water in each sheet">${items}${more}</svg>`;
}

const initials = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"] as const;

/** The year through the wall: depth against date on the stain scale, as runs of equal tone, with the months under it. */
export function yearSvg(wall: DrawnWall, width: number, height: number): string {
  const year = wall.year;
  if (year === null) return "";
  const months = 17;
  const w = width / year.days;
  const h = height / year.columns;
  let cells = "";
  for (let column = 0; column < year.columns; column += 1) {
    let from = 0;
    for (let day = 1; day <= year.days; day += 1) {
      const tone = toneAt(year, from, column);
      if (day < year.days && toneAt(year, day, column) === tone) continue;
      // Each run laps over the next and the row below, else a hairline of paper shows between them.
      const right = Math.min(width, day * w + 0.6);
      cells += `<path d="M${n(from * w)} ${n(column * h)}H${n(right)}V${n(Math.min(height, (column + 1) * h + 0.6))}H${n(from * w)}z" fill="${tone}"/>`;
      from = day;
    }
  }
  const labels = [0, 2, 4, 6, 8, 10]
    .map(
      (month) =>
        `<text x="${n(((month + 0.5) / 12) * width)}" y="${height + 14}" text-anchor="middle" class="tick" fill="${secondInk}">${initials[(year.firstMonth + month) % 12]}</text>`,
    )
    .join("");
  return `<svg viewBox="0 0 ${n(width)} ${height + months}" width="${n(width)}" height="${height + months}" role="img" aria-label="${escapeHtml(wall.yearNote)}">${cells}<rect x=".5" y=".5" width="${n(width - 1)}" height="${height - 1}" fill="none" stroke="${ink}"/>${labels}</svg>`;
}

/** The scale of the year's map: its two ends in words. */
export function stainKey(): string {
  const steps = 13;
  const tones = Array.from(
    { length: steps },
    (_, step) =>
      `<rect x="${step * 5}" y="0" width="5.3" height="9" fill="${stain(0.4 + (step / (steps - 1)) * 0.6)}"/>`,
  ).join("");
  return `<svg viewBox="0 0 66 9" width="66" height="9" role="img" aria-label="Tones from 40 to 100 % relative humidity">${tones}</svg>`;
}

/** Tone in twenty-four steps: finer is not seen in print and costs paper. */
const toneAt = (year: NonNullable<DrawnWall["year"]>, day: number, column: number): string =>
  stain(0.4 + (Math.round(((year.humidity[day * year.columns + column]! - 0.4) / 0.6) * 24) / 24) * 0.6);
