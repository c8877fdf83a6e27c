import {
  publishedChecks,
  runPublishedCheck,
  type PublishedCheckResult,
} from "../../../solver/studies/published-checks/index.ts";
import { exit, type Command } from "../command.ts";

function toTheEnd(check: (typeof publishedChecks)[number]): PublishedCheckResult {
  const steps = runPublishedCheck(check);
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}

/** Runs the published cases whose answers are known from outside of the program, here and now. */
export const checks: Command = {
  name: "checks",
  takes: "[WORD] [--quick] [--json]",
  summary: "run the published cases that the solver is held against",
  positionals: { least: 0, most: 1 },
  options: {
    quick: { type: "boolean", hint: "leave out those of more than a few seconds" },
    json: { type: "boolean", hint: "one JSON document, with every figure" },
  },
  run(given, output) {
    const word = (given.positionals[0] ?? "").toLowerCase();
    const chosen = publishedChecks.filter(
      (check) => `${check.id} ${check.title}`.toLowerCase().includes(word) && !(given.flag("quick") && check.slow),
    );
    if (chosen.length === 0) {
      output.note(
        `No published case has "${word}" in its name. There are: ${publishedChecks.map(({ id }) => id).join(", ")}.`,
      );
      return Promise.resolve(exit.usage);
    }
    const results = chosen.map((check) => {
      output.note(check.title);
      const result = toTheEnd(check);
      if (!given.flag("json")) {
        const worst = result.closest;
        const used =
          worst === null ? "" : `; ${worst.row.what} uses ${(worst.share * 100).toFixed(0)} % of its tolerance`;
        output.result(
          `${result.holds ? "holds   " : "does not"}  ${check.id}${used}\n          ${check.source} [${check.flag}]`,
        );
        for (const failure of result.failures) output.result(`          ${failure}`);
      }
      const { title, source, flag, compares, tolerance } = check;
      return { title, source, flag, compares, tolerance, ...result };
    });
    if (given.flag("json"))
      output.result(JSON.stringify({ format: "wallyear-checks", formatVersion: 1, checks: results }, null, 2));
    return Promise.resolve(results.every((result) => result.holds) ? exit.done : exit.unfinished);
  },
};
