import { watchStore } from '#store/watch.ts';

/** How often the host is asked for a newer version of the page, at most. */
const ASK_MS = 3_600_000;

/** Knows that a newer version of the page has come. It is said once nothing is being timed, and loaded when the user likes. */
export class Versions {
  private newer = $state(false);
  private timing = $state(watchStore().load() !== null);
  private asked = performance.now();

  constructor(private readonly workers: ServiceWorkerContainer | undefined) {
    // The first worker of all takes charge of a page that it did not serve: that is no newer version.
    let served = Boolean(workers?.controller);
    workers?.addEventListener('controllerchange', () => {
      this.newer ||= served;
      served = true;
    });
    setInterval(() => this.newer && (this.timing = watchStore().load() !== null), 1000);
  }

  get tell(): boolean {
    return this.newer && !this.timing;
  }

  /** The page is looked at again after a while. */
  look(): void {
    if (!this.workers || performance.now() - this.asked < ASK_MS) return;
    this.asked = performance.now();
    void this.workers.getRegistration().then((r) => r?.update()).catch(() => undefined);
  }
}
