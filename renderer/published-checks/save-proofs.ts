import { publishedChecks, type PublishedCheckResult } from "../../solver/index.ts";
import { host } from "../host.ts";
import { view } from "../state/index.ts";
import { proofsCsv } from "./proofs-csv.ts";
import { useProofStore } from "./proof-store.ts";

/** Saves every figure that was computed today. */
export async function saveProofs(): Promise<void> {
  const { proofs } = useProofStore.getState();
  const results = publishedChecks.flatMap(({ id }): PublishedCheckResult[] => {
    const outcome = proofs[id]?.outcome;
    return outcome ? [outcome.result] : [];
  });
  try {
    await host.saveText("published cases.csv", proofsCsv(results), "text/csv");
  } catch (error) {
    view({ notice: error instanceof Error ? error.message : String(error) });
  }
}
