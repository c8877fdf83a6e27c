import { useEffect, useState } from "react";
import { runAgain, stopRuns, type RunView } from "../state/index.ts";

/** Seconds, ticking, for as long as something is under way. */
function useNow(ticking: boolean): number {
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    if (!ticking) return;
    const timer = setInterval(() => setNow(Date.now()), 500);
    return () => clearInterval(timer);
  }, [ticking]);
  return now;
}

function Verb({ children, onClick }: { children: string; onClick: () => void }) {
  return (
    <button type="button" className="verb" onClick={onClick}>
      {children}
    </button>
  );
}

/** How fresh the result of the path in view is, with the one verb that fits. */
export function RunCell({ run }: { run: RunView }) {
  const now = useNow(run.status === "running");
  switch (run.status) {
    case "running": {
      const { progress } = run;
      if (!progress || progress.done === 0) return <>Waiting for its turn</>;
      const spent = (now - progress.startedAt) / 1000;
      const left = Math.max(0, (spent * (progress.of - progress.done)) / progress.done);
      const year = Math.floor(progress.done / 8760) + 1;
      return (
        <>
          Year {year}. {spent.toFixed(0)} s so far, about {left.toFixed(0)} s left.{" "}
          <Verb onClick={stopRuns}>Stop and keep</Verb>
        </>
      );
    }
    case "stale":
      return (
        <>
          For an earlier wall. <Verb onClick={runAgain}>Run again</Verb>
        </>
      );
    case "stopped":
      return (
        <>
          Stopped; what was computed is kept. <Verb onClick={runAgain}>Run again</Verb>
        </>
      );
    case "failed":
      return (
        <>
          <span className="pencil">Could not go on.</span> <Verb onClick={runAgain}>Run again</Verb>
        </>
      );
    case "finished": {
      const result = run.result!;
      const years = Math.round(result.hours / 8760);
      return (
        <>
          Current{years > 0 ? ` · year ${years} of ${years}` : ""} · {result.log.seconds.toFixed(1)} s
        </>
      );
    }
    case "empty": {
      const count = run.issues.filter((issue) => issue.severity === "error").length;
      if (count === 0) return <>Nothing was run yet</>;
      return <span className="pencil">{count === 1 ? "1 thing" : `${count} things`} to put right before a run</span>;
    }
  }
}
