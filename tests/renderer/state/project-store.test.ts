import { beforeEach, expect, test } from "vitest";
import {
  applyEdit,
  nextRedo,
  nextUndo,
  redo,
  replaceProject,
  undo,
  useProjectStore,
} from "../../../renderer/state/project-store.ts";
import { demoProject } from "../../../solver/index.ts";

const nameIt = (name: string): void => applyEdit(`Call it ${name}`, (project) => ({ ...project, name }));
const nameOf = (): string => useProjectStore.getState().project.name;

beforeEach(() => replaceProject(demoProject));

test("edits are undone and redone by name, in order", () => {
  nameIt("one");
  nameIt("two");
  expect(nextUndo()).toBe("Call it two");
  undo();
  expect([nameOf(), nextUndo(), nextRedo()]).toEqual(["one", "Call it one", "Call it two"]);
  undo();
  expect([nameOf(), nextUndo(), nextRedo()]).toEqual([demoProject.name, null, "Call it one"]);
  redo();
  redo();
  expect([nameOf(), nextRedo()]).toEqual(["two", null]);
});

test("an edit that changes nothing is not remembered", () => {
  applyEdit("Nothing", (project) => project);
  expect(nextUndo()).toBeNull();
});

test("a new edit after an undo drops what could have been redone", () => {
  nameIt("one");
  undo();
  nameIt("other");
  expect([nextUndo(), nextRedo()]).toEqual(["Call it other", null]);
});

test("nothing before an opened document can be undone", () => {
  nameIt("one");
  replaceProject(demoProject);
  expect([nextUndo(), nextRedo()]).toEqual([null, null]);
});
