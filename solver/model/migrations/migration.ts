/** A step from one version of the file to the next: takes the parsed file, gives a new one; never edited after release. */
export type Migration = (file: Readonly<Record<string, unknown>>) => Record<string, unknown>;
