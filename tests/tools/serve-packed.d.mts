/** The built page as a static host serves it; see the module. */
export function servePacked(how?: { readonly port?: number; readonly pack?: 'gzip' | 'br' | 'none' }): Promise<{ readonly url: string; sentSince(): number; close(): void }>;
