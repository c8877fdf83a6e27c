import { escapeHtml } from "./escape-html.ts";
import { inSentence } from "./layer-words.ts";
import type { DrawnWall } from "./report.ts";
import { stain, stainEnds } from "./stain-scale.ts";
import { hatchSvg, ink } from "./svg-hatches.ts";

const outsideInk = "#17697A";
const insideInk = "#8F5408";
const core = 156;
const leastDrawn = 3.2;
const n = (value: number): string => String(Math.round(value * 100) / 100);

/** Millimetres on paper of a metre of wall at 1:`scale`, in px of 96 to the inch. */
const pxPerMetre = (scale: number): number => (1000 / scale) * (96 / 25.4);

/** Section outside at the top, to scale; sheets are drawn thicker than they are. With the one temperature beside the marked face. */
export function sectionSvg(wall: DrawnWall, scale: number, height: number): string {
  const px = pxPerMetre(scale);
  const heights = wall.layers.map((layer) => Math.max(leastDrawn, layer.thickness_m * px));
  const total = heights.reduce((sum, each) => sum + each, 0);
  const top = height - total - 22;
  let y = top;
  let drawn = "";
  let marked = top;
  wall.layers.forEach((layer, index) => {
    const h = heights[index]!;
    const fill = layer.stain === null ? "#FFFFFF" : stain(layer.stain);
    drawn += `<rect x="0" y="${n(y)}" width="${core}" height="${n(h)}" fill="${fill}"/>`;
    if (layer.stain === null || h > 10) drawn += hatchSvg(layer.hatch, 0, y, core, h);
    drawn += `<path d="M0 ${n(y)}H${core}" stroke="${ink}" stroke-width=".8"/>`;
    y += h;
    if (index === wall.marked) marked = y;
  });
  const name = inSentence(wall.layers[wall.marked]!.name);
  const label = `${wall.title}: ${wall.layers.map((layer) => layer.name).join(", ")}, outside first`;
  return `<svg viewBox="0 0 400 ${n(height)}" width="400" height="${n(height)}" role="img" aria-label="${escapeHtml(label)}">
<text x="0" y="${n(top - 7)}" class="outside" fill="${outsideInk}">${escapeHtml(wall.outside)}</text>
${drawn}<rect x="0" y="${n(top)}" width="${core}" height="${n(total)}" fill="none" stroke="${ink}" stroke-width="1.5"/>
<text x="0" y="${n(height - 6)}" class="inside" fill="${insideInk}">${escapeHtml(wall.inside)}</text>
<circle cx="${core}" cy="${n(marked)}" r="3" fill="${ink}"/><path d="M${core} ${n(marked)}H${core + 22}" stroke="${ink}"/>
<text x="${core + 28}" y="${n(marked)}" class="big" fill="${ink}">${escapeHtml(wall.mark)}</text>
${wrapped(`${wall.markNote} Here: the inner face of the ${name}.`, 31)
  .map(
    (text, row) =>
      `<text x="${core + 28}" y="${n(marked + 18 + row * 15)}" class="note" fill="#4A515B">${escapeHtml(text)}</text>`,
  )
  .join("")}
</svg>`;
}

/** Cups filled in halves; a row holds twelve, more are said in words. */
export function cupsSvg(cups: number): string {
  const shown = Math.min(12, cups);
  const whole = Math.floor(shown);
  const items = Array.from({ length: Math.ceil(shown) }, (_, index) => {
    const x = index * 25;
    const full = index < whole;
    const outline = `M${x + 1} 1L${x + 4} 20H${x + 15}L${x + 18} 1`;
    const filling = full
      ? `M${x + 1.5} 4L${x + 4} 20H${x + 15}L${x + 17.5} 4Z`
      : `M${x + 2.6} 11L${x + 4} 20H${x + 15}L${x + 16.4} 11Z`;
    return `<path d="${filling}" fill="#7D4759"/><path d="${outline}" fill="none" stroke="${ink}"/>`;
  }).join("");
  const more = cups > 12 ? `<text x="304" y="17" class="note" fill="${ink}">and ${n(cups - 12)} more</text>` : "";
  return `<svg viewBox="0 0 400 22" width="400" height="22" role="img" aria-label="${n(cups)} cups of water">${items}${more}</svg>`;
}

const initials = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"] as const;

/** The year through the wall: depth against date on the stain scale, as runs of equal tone. */
export function yearSvg(wall: DrawnWall): string {
  const year = wall.year;
  if (year === null) return "";
  const width = 390;
  const height = 52;
  const w = width / year.days;
  const h = height / year.columns;
  let cells = "";
  for (let column = 0; column < year.columns; column += 1) {
    let from = 0;
    for (let day = 1; day <= year.days; day += 1) {
      const tone = toneAt(year, from, column);
      if (day < year.days && toneAt(year, day, column) === tone) continue;
      cells += `<path d="M${n(from * w)} ${n(column * h)}h${n((day - from) * w + 0.2)}v${n(h + 0.2)}h${n(-(day - from) * w - 0.2)}z" fill="${tone}"/>`;
      from = day;
    }
  }
  const labels = [0, 2, 4, 6, 8, 10]
    .map(
      (month) =>
        `<text x="${n((month / 12) * width + 8)}" y="66" class="tick" fill="#4A515B">${initials[(year.firstMonth + month) % 12]}</text>`,
    )
    .join("");
  const scale = Array.from(
    { length: 13 },
    (_, step) =>
      `<rect x="${n(300 + step * 4)}" y="72" width="4.2" height="6" fill="${stain(0.4 + (step / 12) * 0.6)}"/>`,
  ).join("");
  return `<svg viewBox="0 0 400 82" width="400" height="82" role="img" aria-label="${escapeHtml(wall.yearNote)}">${cells}<rect x="0" y="0" width="${width}" height="${height}" fill="none" stroke="${ink}"/>${labels}${scale}<text x="296" y="78" text-anchor="end" class="tick" fill="#4A515B">${stainEnds[0]}</text><text x="356" y="78" class="tick" fill="#4A515B">${stainEnds[1]}</text></svg>`;
}

/** Tone in twenty-four steps: finer is not seen in print and costs paper. */
const toneAt = (year: NonNullable<DrawnWall["year"]>, day: number, column: number): string =>
  stain(0.4 + (Math.round(((year.humidity[day * year.columns + column]! - 0.4) / 0.6) * 24) / 24) * 0.6);

/** A bar of the drawing's own scale, so that a copy made larger or smaller still tells. */
export function measuringBar(scale: number, metric: boolean): string {
  const lengths = metric ? [0, 0.05, 0.1] : [0, 0.0508, 0.1016];
  const px = pxPerMetre(scale);
  const ticks = lengths
    .map(
      (length, index) =>
        `<path d="M${n(length * px + 1)} 2v6" stroke="${ink}"/><text x="${n(length * px + 1)}" y="18" class="tick" text-anchor="${index === 0 ? "start" : "middle"}" fill="#4A515B">${metric ? `${length * 1000} mm` : `${Math.round(length / 0.0254)} in.`}</text>`,
    )
    .join("");
  return `<svg viewBox="0 0 180 22" width="180" height="22" role="img" aria-label="Measuring bar, scale 1 to ${scale}"><path d="M1 5H${n(lengths[2]! * px + 1)}" stroke="${ink}" stroke-width="1.5"/>${ticks}</svg>`;
}

function wrapped(text: string, most: number): string[] {
  const lines: string[] = [""];
  for (const word of text.split(" ")) {
    const last = lines[lines.length - 1]!;
    if (last !== "" && last.length + word.length + 1 > most) lines.push(word);
    else lines[lines.length - 1] = last === "" ? word : `${last} ${word}`;
  }
  return lines;
}
