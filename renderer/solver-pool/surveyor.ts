import * as Comlink from "comlink";
import type { Project } from "../../solver/index.ts";
import type { SurveyOutcome } from "../exposure/survey.ts";
import type { SolverWorker } from "./worker-contract.ts";

/** One worker besides the pool, so that the year is shown while walls are still being run. Made when first asked. */
export class Surveyor {
  private readonly makeWorker: () => Worker;
  private remote: Comlink.Remote<SolverWorker> | null = null;
  private readonly sent = new Map<string, string>();

  constructor(makeWorker: () => Worker) {
    this.makeWorker = makeWorker;
  }

  async survey(project: Project, files: Readonly<Record<string, string>>): Promise<SurveyOutcome> {
    this.remote ??= Comlink.wrap<SolverWorker>(this.makeWorker());
    for (const [name, text] of Object.entries(files)) {
      if (this.sent.get(name) === text) continue;
      await this.remote.keepFile(name, text);
      this.sent.set(name, text);
    }
    return this.remote.survey(project);
  }
}
