import { placeById } from "../../climate/index.ts";
import { appendixPage } from "./appendix-page.ts";
import { builderPage } from "./builder-page.ts";
import { booksPage } from "./books-page.ts";
import { cautionsOf, standingCautions } from "./cautions.ts";
import { clientPage } from "./client-page.ts";
import { officialPage } from "./official-page.ts";
import type { Report, ReportInput, TitleBlock } from "./report.ts";

/** Puts a report together from what has been run. Throws a RangeError without any option; everything else missing is said in words. */
export function reportOf(input: ReportInput): Report {
  if (input.options.length === 0)
    throw new RangeError("options must hold at least one option that has been run, got none");
  return {
    format: "wallyear-report",
    formatVersion: 1,
    units: input.units,
    titleBlock: titleBlockOf(input),
    cautions: cautionsOf(input),
    standing: standingCautions(input),
    pages: {
      client: clientPage(input),
      official: officialPage(input),
      builder: builderPage(input),
      appendix: appendixPage(input),
      books: booksPage(input),
    },
  };
}

function titleBlockOf(input: ReportInput): TitleBlock {
  const { site, run } = input.project;
  const weather = site?.weather;
  const place =
    weather === undefined
      ? "laboratory"
      : typeof weather.city === "string"
        ? (placeById(weather.city)?.name ?? weather.city)
        : String(weather.file);
  return {
    project: input.project.name,
    site: site?.climateZone === undefined ? place : `${place}, zone ${site.climateZone}`,
    weather: input.weather.kind === "synthetic" ? "synthetic year" : input.weather.label,
    run: `${run.years} ${run.years === 1 ? "year" : "years, last read"}`,
    issued: input.issued ?? "draft, not signed",
    options: input.options.map((option) => option.id).join(", "),
  };
}
