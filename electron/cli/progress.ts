interface Row {
  readonly label: string;
  done: number;
  of: number;
}

/**
 * Progress of several runs on standard error: one line that is drawn over on a terminal, a line for each tenth elsewhere.
 * `now` is in milliseconds.
 */
export class ProgressLine {
  readonly #rows = new Map<string, Row>();
  readonly #stream: { write(text: string): unknown; isTTY?: boolean };
  readonly #now: () => number;
  #lastDrawn = -Infinity;
  #lastTenth = 0;

  constructor(stream: { write(text: string): unknown; isTTY?: boolean }, now: () => number) {
    this.#stream = stream;
    this.#now = now;
  }

  expect(label: string): void {
    this.#rows.set(label, { label, done: 0, of: 1 });
  }

  report(label: string, done: number, of: number): void {
    const row = this.#rows.get(label);
    if (row === undefined) return;
    row.done = done;
    row.of = Math.max(of, 1);
    this.#draw();
  }

  finish(): void {
    if (this.#stream.isTTY === true) this.#stream.write("\r\u001b[2K");
  }

  #draw(): void {
    const rows = [...this.#rows.values()];
    const share = rows.reduce((sum, row) => sum + Math.min(1, row.done / row.of), 0) / rows.length;
    if (this.#stream.isTTY === true) {
      if (this.#now() - this.#lastDrawn < 100) return;
      this.#lastDrawn = this.#now();
      const running = rows.filter((row) => row.done > 0 && row.done < row.of).map((row) => row.label);
      this.#stream.write(`\r\u001b[2K${String(Math.floor(share * 100)).padStart(3)} %  ${running.join(", ")}`);
      return;
    }
    const tenth = Math.floor(share * 10 + 1e-9);
    if (tenth <= this.#lastTenth) return;
    this.#lastTenth = tenth;
    this.#stream.write(`${tenth * 10} %\n`);
  }
}
