const FIRST_ROOM = 1 << 14;

/** Numbers that come one by one, kept in one array that doubles when it is full. */
export class Column {
  private room = new Float64Array(FIRST_ROOM);
  length = 0;

  push(value: number): void {
    if (this.length === this.room.length) {
      const wider = new Float64Array(2 * this.length);
      wider.set(this.room);
      this.room = wider;
    }
    this.room[this.length++] = value;
  }

  /** What came so far. */
  get values(): Float64Array {
    return this.room.subarray(0, this.length);
  }
}
