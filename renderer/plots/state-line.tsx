import { useEffect, useState } from "react";
import { runAgain, stopRuns, view, type RunView, type SheetId } from "../state/index.ts";
import { Sentence } from "../units/index.ts";
import { dayName, type TimeScale } from "./calendar.ts";
import type { MapState } from "./map-states.tsx";

/** The state of a result as its picture shows it. */
export function mapStateOf(run: RunView, time: TimeScale): MapState {
  switch (run.status) {
    case "empty":
      return { kind: "empty" };
    case "stale":
      return { kind: "stale" };
    case "finished":
      return { kind: "finished" };
    case "running": {
      const { progress } = run;
      if (!progress || progress.of <= 0) return { kind: "running", share: 0 };
      const year = Math.min(8760, progress.of);
      const before = Math.max(0, progress.of - year);
      const inYear = progress.done <= before ? (progress.done % 8760) / 8760 : (progress.done - before) / year;
      return { kind: "running", share: Math.min(1, inYear) };
    }
    case "stopped":
    case "failed": {
      const days = run.result?.map.days ?? 0;
      if (days === 0) return { kind: "empty" };
      const hour = run.result?.failure?.hour;
      const clock = hour === undefined ? "" : `, ${String(hour % 24).padStart(2, "0")}:00`;
      return { kind: "stopped", share: Math.min(1, days / time.days), at: `${dayName(time, days - 1)}${clock}` };
    }
  }
}

/** One sentence about a result that is not whole and current, and the one verb that helps. Null when there is nothing to say. */
export function StateLine({
  run,
  time,
  name,
}: {
  run: RunView;
  time: TimeScale;
  name?: string;
}): React.JSX.Element | null {
  const seconds = useSecondsSince(run.status === "running" ? (run.progress?.startedAt ?? null) : null);
  const who = name ? <b className="state-who">{name}</b> : null;
  switch (run.status) {
    case "finished":
      return null;
    case "running": {
      const { progress } = run;
      if (!progress || progress.done === 0)
        return (
          <p className="state-line">
            {who}This wall is waiting for its turn. <Verb onClick={stopRuns}>Stop and keep</Verb>
          </p>
        );
      const left = (seconds * (progress.of - progress.done)) / progress.done;
      const day = Math.floor((progress.done % 8760) / 24);
      return (
        <p className="state-line">
          {who}
          {time.startDay === null
            ? dayName(time, progress.done / 24)
            : `Year ${Math.floor(progress.done / 8760) + 1}, ${dayName({ ...time, startDay: time.startDay }, day)}`}
          . {seconds.toFixed(0)} s so far, about {left.toFixed(0)} s left. <Verb onClick={stopRuns}>Stop and keep</Verb>
        </p>
      );
    }
    case "stale":
      return (
        <p className="state-line">
          {who}
          This is the wall before “<Sentence text={run.staleBecause ?? "the last change"} />
          ”. <Verb onClick={runAgain}>Run again</Verb>
        </p>
      );
    case "stopped":
      return (
        <p className="state-line">
          {who}You stopped this run. What was computed is kept. <Verb onClick={runAgain}>Run again</Verb>
        </p>
      );
    case "failed": {
      const [sheet, verb] = remedySheet(`${run.failure?.message ?? ""} ${run.failure?.remedy ?? ""}`);
      return (
        <p className="state-line">
          {who}
          {run.failure?.message ?? "The run could not go on."} {run.failure?.remedy}{" "}
          {run.result ? "What was computed is kept. " : ""}
          <Verb onClick={() => view({ sheet })}>{verb}</Verb>
        </p>
      );
    }
    case "empty": {
      const issue = run.issues.find(({ severity }) => severity === "error");
      const [sheet, verb] = issue ? remedySheet(`${issue.path} ${issue.message}`) : (["wall", ""] as const);
      return (
        <p className="state-line">
          {who}
          {issue ? `${issue.message} ${issue.remedy} ` : "No year has been run for this wall. "}
          {issue ? <Verb onClick={() => view({ sheet })}>{verb}</Verb> : <Verb onClick={runAgain}>Run it</Verb>}
        </p>
      );
    }
  }
}

const remedySheet = (text: string): readonly [SheetId, string] =>
  /weather|site|face|indoor|humidity inside|room|exposure|rain/i.test(text) && !/layer/i.test(text)
    ? ["exposure", "Go to Exposure"]
    : ["wall", "Go to Wall"];

function Verb({ children, onClick }: { children: string; onClick: () => void }): React.JSX.Element {
  return (
    <button type="button" className="verb verb-marked" onClick={onClick}>
      {children}
    </button>
  );
}

function useSecondsSince(startedAt: number | null): number {
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    if (startedAt === null) return;
    const timer = setInterval(() => setNow(Date.now()), 500);
    return () => clearInterval(timer);
  }, [startedAt]);
  return startedAt === null ? 0 : Math.max(0, (now - startedAt) / 1000);
}
