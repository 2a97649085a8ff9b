/** Seconds by which a clock may be off before it is spoken of: time services set clocks by less than that every day. */
const ENOUGH_S = 60;

/**
 * Sees the clock on the wall being set back, by the page's own clock, which only ever goes on. A jump ahead is not looked for: the
 * page's own clock may stand still while a device sleeps.
 */
export class WallClock {
  private wallMs: number;
  private ownMs: number;

  constructor(
    private readonly wall: () => number,
    private readonly own: () => number
  ) {
    this.wallMs = wall();
    this.ownMs = own();
  }

  /** Seconds by which it was set back since the last call; 0 where it was not. */
  setBackS(): number {
    const wall = this.wall();
    const own = this.own();
    const backS = (own - this.ownMs - (wall - this.wallMs)) / 1000;
    this.wallMs = wall;
    this.ownMs = own;
    return backS > ENOUGH_S ? backS : 0;
  }

  /** Seconds by which it stands before a moment that has been; 0 where it does not. */
  beforeS(atMs: number): number {
    const s = (atMs - this.wall()) / 1000;
    return s > ENOUGH_S ? s : 0;
  }
}
