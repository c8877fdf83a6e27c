import type { Issue } from "../../climate/index.ts";

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const stop = (text: string): string => (/[.!?]$/.test(text) ? text : `${text}.`);

/** An issue as sentences: what is wrong, then what to do. */
export const sentence = (issue: Issue | undefined): string =>
  issue ? `${stop(capital(issue.message))} ${stop(capital(issue.remedy))}` : "";
