import { version as rowtailor } from '../../package.json';

/** Version of this program. */
export const version = (): string => rowtailor;

/** SHA-256 of a text as UTF-8, in hexadecimal. */
export async function sha256(text: string): Promise<string> {
  const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text));
  return [...new Uint8Array(digest)].map((b) => b.toString(16).padStart(2, '0')).join('');
}
