const TYPES = [
  ['', 'application/json'],
  // Some systems share no JSON, but every one shares text.
  ['.txt', 'text/plain']
] as const;

/** The file in a form that this device's share sheet takes; null where it has none. */
export function shareable(name: string, content: string): ShareData | null {
  if (typeof navigator === 'undefined' || typeof navigator.canShare !== 'function' || typeof navigator.share !== 'function') return null;
  for (const [ending, type] of TYPES) {
    const data: ShareData = { files: [new File([content], name + ending, { type })], title: name };
    if (navigator.canShare(data)) return data;
  }
  return null;
}

/** Opens the share sheet. False where it was closed without sharing; throws where it could not open. */
export async function share(data: ShareData): Promise<boolean> {
  try {
    await navigator.share(data);
    return true;
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') return false;
    throw error;
  }
}
