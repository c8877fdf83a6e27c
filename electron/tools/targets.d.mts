export type TargetName = "renderer" | "main" | "preload" | "cli";
export const root: string;
export const targets: Readonly<Record<TargetName, { readonly out: string }>>;
export function isStale(name: TargetName): boolean;
export function buildTarget(name: TargetName, options?: { quiet?: boolean }): Promise<void>;
export function buildStale(names: readonly TargetName[], options?: { quiet?: boolean }): Promise<TargetName[]>;
