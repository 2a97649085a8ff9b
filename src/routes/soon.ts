/** A task of its own. Where the browser knows of urgent ones it is taken before the next picture: pictures of half a page take longer than its parts. */
export function soon(task: () => void): void {
  const { scheduler } = globalThis as { scheduler?: { postTask(task: () => void, options: { priority: 'user-blocking' }): Promise<void> } };
  if (scheduler) void scheduler.postTask(task, { priority: 'user-blocking' });
  else setTimeout(task);
}
