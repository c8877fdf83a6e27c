import * as Comlink from "comlink";
import type { Case } from "../../solver/index.ts";
import type { RunOutcome, SolverWorker } from "./worker-contract.ts";

export interface Job {
  readonly case: Case;
  readonly onStart?: () => void;
  readonly onProgress?: (done: number, of: number) => void;
}

export interface RunningJob {
  /** Rejects with `WorkerLost` if the worker died or had to be ended. */
  readonly outcome: Promise<RunOutcome>;
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
  readonly job: Job;
  settle: { resolve: (outcome: RunOutcome) => void; reject: (error: Error) => void };
  stopAsked: boolean;
}

/** How long a run may take to notice that it should stop before its worker is ended. */
const patience_ms = 3000;

/**
 * A few solver workers with one queue. Workers are made when first needed and replaced when they die.
 * Jobs begin in the order in which they were handed in.
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

  run(job: Job): RunningJob {
    let settle!: Entry["settle"];
    const outcome = new Promise<RunOutcome>((resolve, reject) => (settle = { resolve, reject }));
    const entry: Entry = { id: this.nextId++, job, settle, stopAsked: false };
    this.queue.push(entry);
    this.feed();
    return { outcome, stop: () => this.stop(entry) };
  }

  private stop(entry: Entry): void {
    if (entry.stopAsked) return;
    entry.stopAsked = true;
    const place = this.queue.indexOf(entry);
    if (place >= 0) {
      this.queue.splice(place, 1);
      entry.settle.reject(new NeverBegun("the run was taken off the queue"));
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
    entry.job.onStart?.();
    try {
      for (const [name, text] of this.files) {
        if (member.files.get(name) === text) continue;
        await member.remote.keepFile(name, text);
        member.files.set(name, text);
      }
      const report = Comlink.proxy((done: number, of: number) => entry.job.onProgress?.(done, of));
      entry.settle.resolve(await member.remote.run(entry.id, entry.job.case, report));
    } catch (error) {
      entry.settle.reject(error instanceof Error ? error : new Error(String(error)));
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
    entry?.settle.reject(new WorkerLost(`the solver's worker ended: ${reason || "no reason given"}`));
    this.feed();
  }
}
