import { dropOption, freeOptionLetter, shiftOption } from "./edits.ts";
import { applyEdit, useProjectStore } from "./project-store.ts";
import { useViewStore, view } from "./view-store.ts";
import type { Option } from "../../solver/index.ts";

/** The option in view and its place among the others. */
function here(): { option: Option; at: number; options: readonly Option[] } {
  const { options } = useProjectStore.getState().project;
  const at = Math.max(
    options.findIndex(({ id }) => id === useViewStore.getState().option),
    0,
  );
  return { option: options[at]!, at, options };
}

export function duplicateOption(): void {
  const { option } = here();
  const free = freeOptionLetter(useProjectStore.getState().project);
  if (free === null) return view({ notice: "A project holds eight options at most. Remove one first." });
  applyEdit(`Copy option ${option.id} to ${free}`, (before) => ({
    ...before,
    options: [...before.options, { ...option, id: free, name: `${option.name}, copy` }],
  }));
  view({ option: free });
}

export function removeOption(): void {
  const { option, at, options } = here();
  if (options.length === 1) return view({ notice: "A project needs at least one option." });
  applyEdit(`Remove option ${option.id}`, dropOption(option.id));
  view({ option: (options[at + 1] ?? options[at - 1]!).id });
}

/** Moves the option among the others; its letter goes with it. */
export function moveOption(step: 1 | -1): void {
  const { option, at, options } = here();
  if (options[at + step] === undefined)
    return view({ notice: `Option ${option.id} is the ${step < 0 ? "first" : "last"} already.` });
  applyEdit(`Move option ${option.id} ${step < 0 ? "forward" : "back"}`, shiftOption(option.id, step));
}
