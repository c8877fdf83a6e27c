import type { Case, Option, RunResult } from "../../solver/index.ts";
import type { RunView } from "../state/index.ts";
import { runViewOf, type RunEntry, type RunSlot } from "../state/run-view.ts";
import { slotName } from "../state/runs-store.ts";

/** How the runs stand that a report speaks of. */
export type Standing =
  | {
      readonly kind: "ready";
      readonly signature: string;
      readonly runs: readonly { readonly case: Case; readonly result: RunResult }[];
    }
  /** `edit` is the first edit since the results were current; null: there were none before. */
  | { readonly kind: "waiting"; readonly done: number; readonly of: number; readonly edit: string | null }
  /** A run was stopped or could not go on. */
  | { readonly kind: "broken"; readonly sentence: string; readonly edit: string | null }
  | { readonly kind: "nothing"; readonly sentence: string };

interface Board {
  readonly slots: Readonly<Record<string, RunSlot>>;
  readonly entries: Readonly<Record<string, RunEntry>>;
}

/** Looks at every path of the options: a report is made only from a whole board. */
export function standingOf(options: readonly Option[], { slots, entries }: Board): Standing {
  const views = options.flatMap((option) =>
    option.paths.map((path) => {
      const slot = slots[slotName(option.id, path.id)];
      return {
        slot,
        where: `${option.id}, ${path.id}`,
        view: runViewOf(slot, slot?.key ? entries[slot.key] : undefined),
      };
    }),
  );
  if (views.length === 0) return { kind: "nothing", sentence: "No option is chosen. Choose at least one." };
  const edit = views.map(({ view }) => view.staleBecause).find((name) => name !== undefined) ?? null;
  for (const { view, where } of views) {
    const sentence = brokenSentence(view, where);
    if (sentence !== null) return { kind: "broken", sentence, edit };
  }
  const done = views.filter(({ view }) => view.status === "finished").length;
  if (done < views.length) return { kind: "waiting", done, of: views.length, edit };
  return {
    kind: "ready",
    signature: views.map(({ slot }) => slot!.key).join(" "),
    runs: views.map(({ view }) => ({ case: view.case!, result: view.result! })),
  };
}

function brokenSentence(view: RunView, where: string): string | null {
  const error = view.issues.find((issue) => issue.severity === "error");
  if (error) return `${error.message} ${error.remedy}`;
  if (view.status === "failed")
    return `${where}: ${view.failure?.message ?? "the run could not go on."} ${view.failure?.remedy ?? ""}`.trim();
  if (view.status === "stopped") return `The run of ${where} was stopped. Run it again to make the report.`;
  return null;
}
