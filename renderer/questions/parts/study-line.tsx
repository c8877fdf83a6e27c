import { useEffect, useState } from "react";
import { view } from "../../state/index.ts";
import { Sentence } from "../../units/index.ts";
import type { AskedStudy } from "../asking/use-study.ts";

function useNow(ticking: boolean): number {
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    if (!ticking) return;
    const timer = setInterval(() => setNow(Date.now()), 500);
    return () => clearInterval(timer);
  }, [ticking]);
  return now;
}

const runs = (count: number): string => (count === 1 ? "1 run" : `${count} runs`);

/** How the answer stands, in one sentence with the one verb that helps. */
export function StudyLine({ asked, says }: { readonly asked: AskedStudy<unknown>; readonly says?: string }) {
  const now = useNow(asked.status === "running");
  return (
    <p className="study-line" role="status">
      <Words asked={asked} now={now} says={says} />
    </p>
  );
}

function Words({ asked, now, says }: { asked: AskedStudy<unknown>; now: number; says: string | undefined }) {
  const { status, done, of, startedAt } = asked;
  switch (status) {
    case "empty":
      return (
        <>
          Nothing has been run for this question. <Verb onClick={asked.ask}>Ask it</Verb>
        </>
      );
    case "running": {
      const spent = startedAt === null ? 0 : Math.max(0, (now - startedAt) / 1000);
      return (
        <>
          {done} of {runs(of)} done, {spent.toFixed(0)} s so far. <Verb onClick={asked.stop}>Stop and keep</Verb>
        </>
      );
    }
    case "paused":
      return (
        <>
          {done} of {runs(of)} are known. <Verb onClick={asked.ask}>Run the rest</Verb>
        </>
      );
    case "stopped":
      return (
        <>
          You stopped after {done} of {runs(of)}; what was found is kept. <Verb onClick={asked.ask}>Go on</Verb>
        </>
      );
    case "stale":
      return (
        <>
          {asked.staleBecause === null ? (
            "This answers the question as it was before. "
          ) : (
            <>
              This is the wall before “<Sentence text={asked.staleBecause} />
              ”.{" "}
            </>
          )}
          <Verb onClick={asked.ask}>Ask again</Verb>
        </>
      );
    case "failed":
      return (
        <>
          <span className="pencil">{asked.failure?.message ?? "The runs could not go on."}</span>{" "}
          {asked.failure?.remedy} {done > 0 ? "What was found is kept. " : ""}
          <Verb onClick={asked.ask}>Ask again</Verb>{" "}
          <Verb onClick={() => view({ sheet: "exposure" })}>Go to Exposure</Verb>
        </>
      );
    case "finished":
      return (
        <span className="quiet">
          {runs(done)}
          {says === undefined ? "" : `, ${says}`}
          {asked.seconds !== null && asked.seconds >= 0.5 ? `, ${asked.seconds.toFixed(0)} s` : ""}.
        </span>
      );
  }
}

function Verb({ children, onClick }: { children: string; onClick: () => void }) {
  return (
    <button type="button" className="verb-marked" onClick={onClick}>
      {children}
    </button>
  );
}
