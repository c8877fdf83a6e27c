import * as Comlink from "comlink";
import type { Case, RunResult } from "../../solver/index.ts";
import type { ReportOrder, ReportOutcome } from "../report/gather-report.ts";
import type {
  PublishedCheckOutcome,
  RunOutcome,
  SelfCheckOutcome,
  SolverWorker,
  SummaryOutcome,
} from "./worker-contract.ts";

export interface Job {
  readonly case: Case;
  readonly onStart?: () => void;
  readonly onProgress?: (done: number, of: number) => void;
}

export interface RunningJob<Outcome = RunOutcome> {
  /** Rejects with `WorkerLost` if the worker died or had to be ended. */
  readonly outcome: Promise<Outcome>;
  /** Waiting: it never begins, and the outcome rejects with `NeverBegun`. Running: it ends soon and keeps what it has. */
  stop(): void;
}

export class NeverBegun extends Error {
  override readonly name = "NeverBegun";
}
export class WorkerLost extends Error {
  override readonly name = "WorkerLost";
}

interface Member {
  readonly worker: Worker;
  readonly remote: Comlink.Remote<SolverWorker>;
  /** Version of each file that this worker holds. */
  readonly files: Map<string, string>;
  busyWith: Entry | null;
}

interface Entry {
  readonly id: number;
  readonly onStart: (() => void) | undefined;
  readonly work: (remote: Comlink.Remote<SolverWorker>, id: number) => Promise<void>;
  readonly reject: (error: Error) => void;
  /** Members of a study wait until no drawn wall does. */
  readonly urgent: boolean;
  stopAsked: boolean;
}

/** How long a run may take to notice that it should stop before its worker is ended. */
const patience_ms = 3000;

/**
 * A few solver workers with one queue. Workers are made when first needed and replaced when they die.
 * Jobs begin in the order in which they were handed in, runs of drawn walls before members of studies.
 */
export class SolverPool {
  readonly size: number;
  private readonly makeWorker: () => Worker;
  private readonly members: Member[] = [];
  private readonly queue: Entry[] = [];
  private readonly files = new Map<string, string>();
  private nextId = 1;

  constructor(makeWorker: () => Worker, size = Math.max(1, Math.min(4, navigator.hardwareConcurrency || 1))) {
    this.makeWorker = makeWorker;
    this.size = size;
  }

  /** Texts that projects name; sent to a worker before its next run. */
  keepFile(name: string, text: string): void {
    this.files.set(name, text);
  }

  run({ case: aCase, onStart, onProgress }: Job): RunningJob {
    return this.enqueue<RunOutcome>(true, onStart, async (remote, id) => {
      const report = Comlink.proxy((done: number, of: number) => onProgress?.(done, of));
      return await remote.run(id, aCase, report);
    });
  }

  /** One member of a study: the small summary of its run. */
  summarise({ case: aCase, onStart }: Pick<Job, "case" | "onStart">): RunningJob<SummaryOutcome> {
    return this.enqueue<SummaryOutcome>(false, onStart, async (remote, id) => await remote.summarise(id, aCase));
  }

  /** What a report is made from. */
  report(order: ReportOrder): RunningJob<ReportOutcome> {
    return this.enqueue<ReportOutcome>(true, undefined, async (remote) => await remote.report(order));
  }

  selfCheck({ case: aCase, onStart, onProgress }: Job, result: RunResult): RunningJob<SelfCheckOutcome> {
    return this.enqueue<SelfCheckOutcome>(false, onStart, async (remote, id) => {
      const report = Comlink.proxy((done: number, of: number) => onProgress?.(done, of));
      return await remote.selfCheck(id, aCase, result, report);
    });
  }

  /** A published case by its name. */
  publishedCheck(checkId: string, { onStart, onProgress }: Omit<Job, "case">): RunningJob<PublishedCheckOutcome> {
    return this.enqueue<PublishedCheckOutcome>(false, onStart, async (remote, id) => {
      const report = Comlink.proxy((done: number, of: number) => onProgress?.(done, of));
      return await remote.publishedCheck(id, checkId, report);
    });
  }

  private enqueue<Outcome>(
    urgent: boolean,
    onStart: (() => void) | undefined,
    ask: (remote: Comlink.Remote<SolverWorker>, id: number) => Promise<Outcome>,
  ): RunningJob<Outcome> {
    let entry!: Entry;
    const outcome = new Promise<Outcome>((resolve, reject) => {
      const work: Entry["work"] = async (remote, id) => resolve(await ask(remote, id));
      entry = { id: this.nextId++, onStart, work, reject, urgent, stopAsked: false };
    });
    const place = urgent ? this.queue.findIndex((waiting) => !waiting.urgent) : -1;
    this.queue.splice(place < 0 ? this.queue.length : place, 0, entry);
    this.feed();
    return { outcome, stop: () => this.stop(entry) };
  }

  private stop(entry: Entry): void {
    if (entry.stopAsked) return;
    entry.stopAsked = true;
    const place = this.queue.indexOf(entry);
    if (place >= 0) {
      this.queue.splice(place, 1);
      entry.reject(new NeverBegun("the run was taken off the queue"));
      return;
    }
    const member = this.members.find((candidate) => candidate.busyWith === entry);
    if (!member) return;
    void member.remote.stop(entry.id);
    setTimeout(() => {
      if (member.busyWith === entry) this.lose(member, "it did not stop when asked to");
    }, patience_ms);
  }

  private feed(): void {
    while (this.queue.length > 0) {
      const member = this.members.find((candidate) => candidate.busyWith === null) ?? this.grow();
      if (!member) return;
      void this.start(member, this.queue.shift()!);
    }
  }

  private grow(): Member | null {
    if (this.members.length >= this.size) return null;
    const worker = this.makeWorker();
    const member: Member = { worker, remote: Comlink.wrap<SolverWorker>(worker), files: new Map(), busyWith: null };
    worker.onerror = (event) => this.lose(member, event.message);
    this.members.push(member);
    return member;
  }

  private async start(member: Member, entry: Entry): Promise<void> {
    member.busyWith = entry;
    entry.onStart?.();
    try {
      for (const [name, text] of this.files) {
        if (member.files.get(name) === text) continue;
        await member.remote.keepFile(name, text);
        member.files.set(name, text);
      }
      await entry.work(member.remote, entry.id);
    } catch (error) {
      entry.reject(error instanceof Error ? error : new Error(String(error)));
    }
    if (member.busyWith === entry) member.busyWith = null;
    this.feed();
  }

  private lose(member: Member, reason: string): void {
    const place = this.members.indexOf(member);
    if (place < 0) return;
    this.members.splice(place, 1);
    const entry = member.busyWith;
    member.busyWith = null;
    member.worker.terminate();
    entry?.reject(new WorkerLost(`the solver's worker ended: ${reason || "no reason given"}`));
    this.feed();
  }
}
