import type { ChartTokens } from "./tokens.ts";

const escaped = (text: string): string => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");

/** As the chart library writes colours; words that are themselves paper-coloured take no paper halo. */
const rgbOf = (hex: string): string => `rgb(${[1, 3, 5].map((at) => parseInt(hex.slice(at, at + 2), 16)).join(", ")})`;

/** A chart's SVG as a file of its own: paper under it, its title above, halos behind the words. */
export function svgDocument(chart: string, title: string, tokens: ChartTokens): string {
  const size = /<svg[^>]*?\swidth="(\d+)"[^>]*?\sheight="(\d+)"/.exec(chart);
  const width = Number(size?.[1] ?? 800);
  const height = Number(size?.[2] ?? 400);
  const style = `text{font-family:"Encode Sans Variable","Encode Sans",sans-serif}.annotation-text:not([style*="fill: ${rgbOf(tokens.paper)}"]){paint-order:stroke;stroke:${tokens.paper};stroke-width:3px;stroke-linejoin:round}`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height + 28}" viewBox="0 0 ${width} ${height + 28}">`,
    `<title>${escaped(title)}</title><style>${style}</style>`,
    `<rect width="100%" height="100%" fill="${tokens.paper}"/>`,
    `<text x="4" y="17" font-size="13" font-weight="600" fill="${tokens.ink}">${escaped(title)}</text>`,
    `<g transform="translate(0 28)">${chart}</g></svg>`,
  ].join("");
}

/** The same picture as PNG at three times its size, for print at the size it is seen. */
export async function pngOf(svg: string): Promise<Blob> {
  const size = /width="(\d+)" height="(\d+)"/.exec(svg);
  const picture = new Image();
  const address = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
  await new Promise<void>((resolve, reject) => {
    picture.onload = () => resolve();
    picture.onerror = () => reject(new Error("The picture could not be drawn. Save it as SVG instead."));
    picture.src = address;
  });
  const canvas = document.createElement("canvas");
  canvas.width = 3 * Number(size?.[1] ?? 800);
  canvas.height = 3 * Number(size?.[2] ?? 400);
  canvas.getContext("2d")!.drawImage(picture, 0, 0, canvas.width, canvas.height);
  return new Promise((resolve, reject) =>
    canvas.toBlob(
      (blob) =>
        blob ? resolve(blob) : reject(new Error("The picture is too large for this window. Save it as SVG instead.")),
      "image/png",
    ),
  );
}
