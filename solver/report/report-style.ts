export type Paper = "letter" | "a4";

/** Print style: light tokens on white, hairlines, no fills but stains. Sizes in pt, so that paper decides. */
export const reportStyle = (paper: Paper): string => `
@page { size: ${paper === "letter" ? "letter" : "A4"} landscape; margin: 10mm 12mm 12mm; @bottom-right { content: "Page " counter(page) " of " counter(pages); font: 8pt "Encode Sans Variable", "Encode Sans", "Helvetica Neue", Arial, sans-serif; color: #4A515B; } }
* { box-sizing: border-box; }
html { background: #FFFFFF; }
body { margin: 0; color: #1C222B; font: 9.2pt/12.6pt "Encode Sans Variable", "Encode Sans", "Helvetica Neue", Arial, sans-serif; font-variant-numeric: tabular-nums; -webkit-print-color-adjust: exact; print-color-adjust: exact; }
table.sheet { width: 100%; border-collapse: collapse; break-before: page; }
table.sheet:first-of-type { break-before: auto; }
table.sheet > tbody > tr > td, table.sheet > tfoot > tr > td { padding: 0; vertical-align: top; }
.question { font-size: 11.5pt; line-height: 15pt; color: #4A515B; margin: 0 0 2pt; }
.answer { font-size: 16pt; line-height: 19.5pt; font-weight: 500; margin: 0 0 6pt; text-wrap: pretty; }
h2 { font-size: 10.2pt; line-height: 13pt; font-weight: 600; margin: 6pt 0 1pt; break-after: avoid; }
p { margin: 2pt 0 5pt; max-width: 175mm; }
p.tone-note { color: #4A515B; font-size: 8.4pt; }
ul, ol { margin: 2pt 0 5pt; padding-left: 13pt; max-width: 190mm; }
li { margin: 0 0 2pt; }
.walls { display: flex; gap: 20pt; align-items: flex-end; }
.wall { flex: 1 1 0; min-width: 0; break-inside: avoid; }
.wall h2 { margin: 0 0 2pt; }
.wall svg { display: block; max-width: 100%; height: auto; }
.wall .cups { font-weight: 600; margin: 2pt 0 4pt; }
.note-line { color: #4A515B; font-size: 8.4pt; margin: 0 0 2pt; }
svg text { font-family: inherit; font-size: 12px; font-weight: 600; }
svg text.big { font-size: 27px; font-weight: 500; }
svg text.note { font-weight: 400; font-size: 12px; }
svg text.tick { font-weight: 400; font-size: 10.5px; }
table.data { border-collapse: collapse; width: 100%; margin: 2pt 0 3pt; }
table.data caption { text-align: left; font-weight: 600; font-size: 10.2pt; padding: 7pt 0 2pt; }
table.data th { text-align: left; font-weight: 600; border-bottom: 0.75pt solid #1C222B; padding: 2pt 8pt 2pt 0; vertical-align: bottom; }
table.data td { border-bottom: 0.4pt solid #C9CAC3; padding: 2pt 8pt 2pt 0; vertical-align: top; overflow-wrap: break-word; }
table.data .numeric { text-align: right; white-space: nowrap; }
table.data tr { break-inside: avoid; }
table.data thead, table.data caption { break-after: avoid; }
table.data tbody tr:first-child { break-before: avoid; }
section[aria-label="Appendix"] table.data, section[aria-label="Appendix"] li { font-size: 7.6pt; line-height: 9.6pt; }
section[aria-label="Appendix"] table.data td { padding-top: 1pt; padding-bottom: 1pt; }
.foot { border-top: 0.75pt solid #1C222B; margin-top: 6pt; padding-top: 4pt; display: flex; gap: 14pt; align-items: flex-end; break-inside: avoid; }
.cautions { flex: 1 1 0; color: #4A515B; font-size: 7.2pt; line-height: 8.8pt; margin: 0; }
.title-block { display: grid; grid-template-columns: repeat(4, auto); border: 0.75pt solid #1C222B; font-size: 8.4pt; line-height: 10.6pt; flex: 0 0 122mm; }
.title-block div { border: 0.4pt solid #C9CAC3; padding: 2pt 5pt; min-width: 0; overflow-wrap: anywhere; }
.title-block span { display: block; color: #666C74; font-size: 7pt; line-height: 8.6pt; }
.scale { display: flex; gap: 8pt; align-items: center; color: #4A515B; font-size: 8.4pt; margin-top: 2pt; }
@media screen { body { max-width: 270mm; margin: 10mm auto; padding: 0 8mm; } table.sheet { margin-bottom: 12mm; } }
`;
