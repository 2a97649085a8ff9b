/** The built page as a static host serves it; see the module. */
export function servePacked(port?: number): Promise<{ readonly url: string; sentSince(): number; close(): void }>;
