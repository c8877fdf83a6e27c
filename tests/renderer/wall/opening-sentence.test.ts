import { expect, test } from "vitest";
import { openingSentence } from "../../../renderer/wall/opening-sentence.ts";
import { controlRuns } from "../../../renderer/wall/wall-facts.ts";
import { boundary, demoProject, starterWalls } from "../../../solver/index.ts";

const sentenceOf = (project: typeof demoProject, at: number): string => {
  const option = project.options[at]!;
  return openingSentence(option, controlRuns(boundary(option, project)));
};

test("insulation outside the sheathing runs unbroken; between the studs the wood crosses it", () => {
  expect(sentenceOf(demoProject, 1)).toBe("Water, air, vapour and thermal control run unbroken through both paths.");
  expect(sentenceOf(demoProject, 0)).toMatch(/Wood crosses the insulation at the stud and plates\.$/);
});

test("where the insulation stops at a ledger the sentence says so", () => {
  const ledger = starterWalls.find(({ project }) =>
    project.options.some((option) =>
      boundary(option, project).breaks.some((one) => one.kind === "break" && one.role === "thermal"),
    ),
  );
  expect(ledger).toBeDefined();
  const { project } = ledger!;
  const at = project.options.findIndex((option) =>
    boundary(option, project).breaks.some((one) => one.kind === "break" && one.role === "thermal"),
  );
  expect(sentenceOf(project, at)).toMatch(/hermal control stops? at the /);
});

test("every starter wall is told in whole sentences", () => {
  for (const { project } of starterWalls) {
    project.options.forEach((_, at) => expect(sentenceOf(project, at)).toMatch(/^[A-Z].*\.$/));
  }
});

test("roles that no layer plays are named together", () => {
  const bare = starterWalls
    .flatMap(({ project }) => project.options.map((option) => ({ project, option })))
    .find(({ project, option }) => {
      const { paths } = boundary(option, project);
      return ["water", "air"].every((role) =>
        paths.every(({ roles }) => roles.find((one) => one.role === role)?.layer === null),
      );
    });
  expect(bare).toBeDefined();
  const runs = controlRuns(boundary(bare!.option, bare!.project));
  expect(openingSentence(bare!.option, runs)).toMatch(/No layer is the water(,| or) .*control\./);
});
