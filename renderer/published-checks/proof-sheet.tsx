import { useState } from "react";
import { publishedChecks, type CheckRow } from "../../solver/index.ts";
import { saveProofs } from "./save-proofs.ts";
import { allChecks, prove, quickChecks, stopProving, useProofStore, type Proof } from "./proof-store.ts";
import { figureWords, shareWords, unitWords } from "./figure-words.ts";
import "./proof-sheet.css";

type Check = (typeof publishedChecks)[number];

/** Every published case that the solver is held against: its source, its tolerance, and today's figure, computed here. */
export function ProofSheet() {
  const proofs = useProofStore((state) => state.proofs);
  const [open, setOpen] = useState<string | null>(null);
  const states = publishedChecks.map(({ id }) => proofs[id]);
  const busy = states.some((proof) => proof?.status === "running" || proof?.status === "waiting");
  return (
    <section className="proof" data-pane="Proof sheet" tabIndex={-1} aria-labelledby="proof-title">
      <h1 className="lead" id="proof-title">
        {opening(states)}
      </h1>
      <p className="secondary proof-about">
        Each case is a wall whose answer is published, follows from a formula, or was worked out by an independent
        solution; its source says which. It goes through the same door as your own walls, on this machine, when you ask.
        COMPUTED: the answer was worked out from the case’s definition.
      </p>
      <p className="proof-verbs" role="status">
        {busy ? (
          <>
            {progress(states)}{" "}
            <button type="button" className="verb" onClick={stopProving}>
              Stop
            </button>
          </>
        ) : (
          <>
            <button type="button" className="verb" onClick={() => prove(allChecks)}>
              Run all {allChecks.length}
            </button>
            <button type="button" className="verb" onClick={() => prove(quickChecks)}>
              Run the {quickChecks.length} quick ones
            </button>
          </>
        )}
        {states.some((proof) => proof?.status === "finished") && (
          <button type="button" className="verb" onClick={() => void saveProofs()}>
            Save figures as CSV
          </button>
        )}
      </p>
      <table className="table proof-table">
        <thead>
          <tr>
            <th>Case and source</th>
            <th>What is compared</th>
            <th>Tolerance, and why</th>
            <th className="proof-today">Today, on this machine</th>
          </tr>
        </thead>
        {publishedChecks.map((check) => (
          <CaseRows
            key={check.id}
            check={check}
            proof={proofs[check.id]}
            open={open === check.id}
            onOpen={() => setOpen(open === check.id ? null : check.id)}
          />
        ))}
      </table>
    </section>
  );
}

function opening(states: readonly (Proof | undefined)[]): string {
  const done = states.flatMap((proof) => (proof?.outcome ? [proof.outcome.result] : []));
  if (done.length === 0) return `${states.length} cases with a known answer, none run today.`;
  const held = done.filter((result) => result.holds).length;
  const rest =
    done.length < states.length ? ` ${states.length - done.length} of ${states.length} are still to be run.` : "";
  return `${held === done.length ? (held === 1 ? "The one that was run holds" : `All ${held} that were run hold`) : `${done.length - held} of ${done.length} do not hold`}.${rest}`;
}

function progress(states: readonly (Proof | undefined)[]): string {
  const running = states.filter((proof) => proof?.status === "running").length;
  const waiting = states.filter((proof) => proof?.status === "waiting").length;
  return `${running} under way, ${waiting} waiting.`;
}

function CaseRows({
  check,
  proof,
  open,
  onOpen,
}: {
  readonly check: Check;
  readonly proof: Proof | undefined;
  readonly open: boolean;
  readonly onOpen: () => void;
}) {
  const result = proof?.outcome?.result ?? null;
  const figures = `proof-${check.id}`;
  return (
    <tbody>
      <tr className="proof-case">
        <th scope="row">
          <span className="strong">{check.title}</span>
          <span className="note">
            {check.source} [{check.flag}]
          </span>
        </th>
        <td>{check.compares}</td>
        <td className="secondary">{check.tolerance}</td>
        <td className="proof-today">
          <Today check={check} proof={proof} />
          {result !== null && result.rows.length > 0 && (
            <button type="button" className="verb" aria-expanded={open} aria-controls={figures} onClick={onOpen}>
              {open ? "Fold the figures" : `${result.rows.length} figures`}
            </button>
          )}
        </td>
      </tr>
      {open && result !== null && (
        <tr id={figures}>
          <td colSpan={4} className="proof-figures">
            <table className="table">
              <thead>
                <tr>
                  <th>Figure</th>
                  <th className="figure">Known answer</th>
                  <th className="figure">Today</th>
                  <th className="figure">Tolerance</th>
                  <th className="figure">Of it used</th>
                  <th>Unit</th>
                </tr>
              </thead>
              <tbody>
                {result.rows.map((row, index) => (
                  <tr key={index}>
                    <th scope="row">{row.what}</th>
                    <td className="figure">{figureWords(row.expected, row.tolerance)}</td>
                    <td className="figure">{figureWords(row.got, row.tolerance)}</td>
                    <td className="figure">{figureWords(row.tolerance, row.tolerance)}</td>
                    <td className={row.holds ? "figure" : "figure pencil"}>{shareWords(row)}</td>
                    <td>{unitWords(row.unit)}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </td>
        </tr>
      )}
    </tbody>
  );
}

function closestWords(row: CheckRow): string {
  const [got, expected] = [row.got, row.expected].map((value) => figureWords(value, row.tolerance));
  return `${row.what}, ${got} against ${`${expected} ${unitWords(row.unit)}`.trim()}; ${shareWords(row)} of the tolerance`;
}

function Today({ check, proof }: { readonly check: Check; readonly proof: Proof | undefined }) {
  const ask = (words: string) => (
    <button type="button" className="verb" aria-label={`${words}: ${check.title}`} onClick={() => prove([check.id])}>
      {words}
    </button>
  );
  if (proof === undefined) return <p>{ask(check.slow ? "Run, longer" : "Run")}</p>;
  switch (proof.status) {
    case "waiting":
      return <p className="quiet">Waiting for its turn</p>;
    case "running":
      return <p>{Math.round(proof.share * 100)} % of a run</p>;
    case "stopped":
      return <p>Stopped. {ask("Run again")}</p>;
    case "failed":
      return (
        <p>
          <span className="pencil">Could not be run: {proof.failure}.</span> {ask("Run again")}
        </p>
      );
    case "finished": {
      const { result, seconds } = proof.outcome!;
      const { closest } = result;
      return (
        <>
          <p>
            {result.holds ? <span className="strong">Holds</span> : <span className="pencil">Does not hold</span>}, in{" "}
            {seconds.toFixed(1)} s
          </p>
          {closest !== null && <p className="note">Closest: {closestWords(closest.row)}</p>}
          {result.failures.map((failure) => (
            <p key={failure} className="pencil">
              {failure}
            </p>
          ))}
        </>
      );
    }
  }
}
