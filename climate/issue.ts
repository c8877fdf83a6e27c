/** One thing to put right in what the user gave: where it stands, what is wrong, what to do. Never an exception. */
export interface Issue {
  /** Where: "options.A.paths.bay.layers.3.thickness_m" or "line 412, column 7". */
  readonly path: string;
  readonly message: string;
  readonly remedy: string;
  /** An error stops the run; a warning is shown beside the result. */
  readonly severity: "error" | "warning";
}

/** Either what was asked for, with warnings, or the list of errors. */
export type Checked<T> =
  | { readonly ok: true; readonly value: T; readonly issues: readonly Issue[] }
  | { readonly ok: false; readonly issues: readonly Issue[] };
