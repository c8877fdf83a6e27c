import { describe, it } from "vitest";
import { publishedChecks } from "../../../solver/studies/published-checks/index.ts";
import { expectCheckHolds } from "../support/run.ts";

const checks = publishedChecks.filter((check) => check.id.startsWith("periodic-"));

describe("walls under a swinging temperature", () => {
  it.each(checks)("$title: amplitudes and time shifts meet the transfer matrices", ({ id }) => {
    expectCheckHolds(id);
  });
});
