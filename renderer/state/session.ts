import { host } from "../host.ts";
import { listenForKeys, runCommand } from "../commands/index.ts";
import { isDirty, listenForDrops, showDocument, useDocumentStore } from "./documents.ts";
import { recallFiles, useFilesStore } from "./files-store.ts";
import { useProjectStore } from "./project-store.ts";
import { replan } from "./rerun.ts";
import { useRunsStore } from "./runs-store.ts";
import { bringBackUnsavedWork, noteUnsavedWork } from "./unsaved-work.ts";

/** Everything that goes on besides drawing: runs after edits, commands, the host's marks. Call once. */
export function startSession(): void {
  void bringBackUnsavedWork().finally(() => replan(null, 0));
  useDocumentStore.subscribe((state, before) => {
    if (state.saved !== before.saved) void recallFiles(useProjectStore.getState().project);
  });
  useProjectStore.subscribe((state, before) => {
    if (state.project !== before.project) replan(state.edit ?? before.edit);
  });
  useFilesStore.subscribe(() => replan("Read a file", 0));

  listenForKeys();
  host.onCommand(runCommand);
  host.onDocument(showDocument);
  useProjectStore.subscribe(tellTitle);
  useDocumentStore.subscribe(tellTitle);
  useProjectStore.subscribe(noteUnsavedWork);
  useDocumentStore.subscribe(noteUnsavedWork);
  listenForDrops();
  useRunsStore.subscribe(tellProgress);
  tellTitle();
}

function tellTitle(): void {
  host.setDirty(isDirty(), useDocumentStore.getState().name ?? useProjectStore.getState().project.name);
}

let told: number | null = null;

/** Share done of all runs on the board; null when none is under way. */
function tellProgress(): void {
  const { entries, slots } = useRunsStore.getState();
  const shown = Object.values(slots).flatMap((slot) => (slot.key === null ? [] : (entries[slot.key] ?? [])));
  const busy = shown.some((entry) => entry.status === "running" || entry.status === "waiting");
  const done = shown.reduce(
    (sum, entry) =>
      sum +
      (entry.status === "running" && entry.progress
        ? entry.progress.done / entry.progress.of
        : entry.status === "waiting"
          ? 0
          : 1),
    0,
  );
  const fraction = busy ? Math.round((done / shown.length) * 100) / 100 : null;
  if (fraction === told) return;
  told = fraction;
  host.setProgress(fraction);
}
