export const LAUNCH_ARGS: string[];
export function browserPath(): string | undefined;
export function ensureBrowser(): string;
