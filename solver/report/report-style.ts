import { papers, setting, type Paper } from "./paper.ts";

const px = (value: number): string => `${value}px`;
const type = ({ size, line }: { readonly size: number; readonly line: number }): string =>
  `font-size: ${px(size)}; line-height: ${px(line)};`;
const family = `"Encode Sans Variable", "Encode Sans", "Helvetica Neue", Arial, sans-serif`;

/** How the printer takes the sheets: one to a page, to the edges; the border stands on the sheet itself. */
export const pageRule = (paper: Paper): string => `@page { size: ${papers[paper].page}; margin: 0; }`;

/** Style of `article.sheet`: ink on white, hairlines, no fills but stains. Rules begin at `.sheets`, the element that holds them. */
export const sheetStyle = (): string => `
.sheets, .sheets * { box-sizing: border-box; margin: 0; padding: 0; }
.sheets { color: #1C222B; font-family: ${family}; font-stretch: 91%; font-weight: 400; ${type(setting.body)} font-variant-numeric: tabular-nums; -webkit-print-color-adjust: exact; print-color-adjust: exact; }
.sheet { background: var(--report-paper, #FFFFFF); padding: ${px(setting.margin)}; forced-color-adjust: none; color-scheme: light; overflow-wrap: anywhere; }
${(Object.keys(papers) as Paper[]).map((name) => `.sheet.${name} { width: ${papers[name].cssWidth}; min-height: calc(${papers[name].cssHeight} - 0.2px); }\n.sheet.${name} .border { min-height: calc(${papers[name].cssHeight} - ${px(2 * setting.margin + 0.2)}); }`).join("\n")}
.sheet .border { border: ${px(setting.border)} solid #1C222B; padding: ${px(setting.top)} 0 0 ${px(setting.side)}; display: flex; flex-direction: column; position: relative; }
.sheet .written { flex: 1 0 auto; margin-right: ${px(setting.side)}; padding-bottom: ${px(setting.footGap)}; }
.sheet .later { padding-top: ${px(setting.laterTop)}; }
.sheet .for { position: absolute; top: ${px(setting.top)}; right: ${px(setting.side)}; color: #4A515B; ${type(setting.note)} }
.sheet h1, .sheet h2, .sheet th, .sheet caption { font-weight: 600; text-align: left; }
.sheet h2 { ${type(setting.heading)} }
.sheet .question { ${type(setting.question)} color: #4A515B; max-width: calc(100% - 150px); }
.sheet .answer { ${type(setting.answer)} font-weight: 500; }
.sheet .answer-rest { ${type(setting.answerRest)} }
.sheet .small { ${type(setting.note)} }
.sheet ul { list-style: none; }
.sheet ul > li { padding-left: 16px; position: relative; }
.sheet ul > li::before { content: "\\2013"; position: absolute; left: 0; color: #4A515B; }
.sheet li, .sheet .listed p { padding-bottom: 3px; }
.sheet ol { list-style: decimal; }
.sheet ol > li { padding-left: 6px; }
.sheet .listed { padding-top: 6px; }
.sheet .hanging { display: grid; grid-template-columns: ${px(setting.labelColumn)} minmax(0, 1fr); column-gap: ${px(setting.labelGap)}; border-top: 1px solid #1C222B; padding-top: 5px; }
.sheet .row { display: grid; grid-template-columns: minmax(0, 1fr) minmax(0, 1fr); column-gap: 34px; }
.sheet svg { display: block; max-width: 100%; }
.sheet .cups { margin-top: 8px; font-weight: 600; }
.sheet .cups p { margin-top: 4px; }
.sheet .no-cups { height: 24px; }
.sheet .years { margin-top: 4px; }
.sheet .year-note { ${type(setting.note)} color: #4A515B; display: flex; justify-content: space-between; margin-bottom: 3px; }
.sheet .key { display: inline-flex; gap: 6px; align-items: center; white-space: nowrap; }
.sheet svg text { font-family: inherit; font-size: 14px; }
.sheet svg text.air { font-weight: 600; }
.sheet svg text.mark { font-size: 32px; font-weight: 500; }
.sheet svg text.tick { font-size: 13.2px; }
.sheet table.data { border-collapse: collapse; table-layout: fixed; width: 100%; }
.sheet table.data caption { ${type(setting.heading)} padding-bottom: 3px; }
.sheet table.data th, .sheet table.data td { padding: 2px ${px(setting.cellGap)} 3px 0; vertical-align: top; text-align: left; }
.sheet table.data thead th { vertical-align: bottom; border-bottom: 1px solid #1C222B; }
.sheet table.data td { border-bottom: 1px solid #D9DAD4; }
.sheet table.data .numeric { text-align: right; }
.sheet .tone-note { ${type(setting.note)} color: #4A515B; margin-top: 4px; }
.sheet .foot { flex: 0 0 auto; display: grid; grid-template-columns: minmax(0, 1fr) ${px(setting.titleBlockWidth)}; column-gap: ${px(setting.footColumnGap)}; align-items: end; }
.sheet .cautions { ${type(setting.caution)} color: #4A515B; padding-bottom: 8px; }
.sheet .title-block { display: grid; grid-template-columns: minmax(0, 1fr) minmax(0, 1fr) 88px; border-top: ${px(setting.border)} solid #1C222B; border-left: ${px(setting.border)} solid #1C222B; }
.sheet .title-block > div { padding: 3px 10px; border-right: 1px solid #C9CAC3; border-bottom: 1px solid #C9CAC3; }
.sheet .title-block > .project { grid-column: span 2; font-weight: 600; border-right: 1px solid #1C222B; border-bottom: 1px solid #1C222B; }
.sheet .title-block > .number { grid-column: 3; grid-row: 1 / span 2; border-right: 0; border-bottom: 1px solid #1C222B; }
.sheet .title-block > .options { grid-column: 3; grid-row: 3; border-right: 0; border-bottom: 0; }
.sheet .title-block > div:nth-last-child(-n+2) { border-bottom: 0; }
.sheet .title-block > div:nth-child(4), .sheet .title-block > div:last-child { border-right: 1px solid #1C222B; }
.sheet .title-block dt { ${type(setting.blockLabel)} color: #4A515B; font-weight: 400; }
.sheet .title-block dd { ${type(setting.blockValue)} }
.sheet .title-block .number dd { line-height: 34px; white-space: nowrap; }
.sheet .title-block .number b { font-size: 26px; font-weight: 500; }
.sheet :focus { outline: 2px solid #B02A6B; outline-offset: 3px; }
@media print { .sheet { break-after: page; break-inside: avoid; } .sheet:last-child { break-after: auto; } .sheet :focus { outline: none; } }
`;
