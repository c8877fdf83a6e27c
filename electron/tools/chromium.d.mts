export const chromiumVariable: string;
export const howToGetOne: string;
export function findChromium(): string | null;
export function installChromium(): string | null;
