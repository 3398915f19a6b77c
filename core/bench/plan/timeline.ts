/** How much of each resource is taken over time: breakpoints in order, the use from each to the next. */
export class Timeline {
  private readonly capacities: readonly number[];
  private readonly resources: number;
  private count = 1;
  private readonly times: Float64Array;
  private readonly used: Int32Array;

  /** @param activities - how many will be placed at most */
  constructor(capacities: readonly number[], activities: number) {
    this.capacities = capacities;
    this.resources = capacities.length;
    this.times = new Float64Array(2 * activities + 2);
    this.used = new Int32Array((2 * activities + 2) * this.resources);
  }

  clear(): void {
    this.count = 1;
    this.times[0] = 0;
    this.used.fill(0, 0, this.resources);
  }

  /** The last breakpoint not after a moment. */
  private segmentAt(atMs: number): number {
    let low = 0;
    let high = this.count - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (this.times[middle]! <= atMs) low = middle;
      else high = middle - 1;
    }
    return low;
  }

  private fits(segment: number, demands: readonly number[]): boolean {
    const from = segment * this.resources;
    for (let resource = 0; resource < this.resources; resource++) {
      if (this.used[from + resource]! + demands[resource]! > this.capacities[resource]!) return false;
    }
    return true;
  }

  /** The earliest moment from one on at which the demands fit for a whole duration. */
  earliest(fromMs: number, durationMs: number, demands: readonly number[]): number {
    if (durationMs <= 0) return fromMs;
    let startMs = fromMs;
    for (let segment = this.segmentAt(startMs); segment < this.count; segment++) {
      if (this.times[segment]! >= startMs + durationMs) break;
      if (!this.fits(segment, demands)) startMs = segment + 1 < this.count ? this.times[segment + 1]! : Number.POSITIVE_INFINITY;
    }
    return startMs;
  }

  private breakAt(atMs: number): number {
    const segment = this.segmentAt(atMs);
    if (this.times[segment]! === atMs) return segment;
    const next = segment + 1;
    this.times.copyWithin(next + 1, next, this.count);
    this.used.copyWithin((next + 1) * this.resources, next * this.resources, this.count * this.resources);
    this.times[next] = atMs;
    this.used.copyWithin(next * this.resources, segment * this.resources, next * this.resources);
    this.count += 1;
    return next;
  }

  take(startMs: number, durationMs: number, demands: readonly number[]): void {
    if (durationMs <= 0) return;
    const from = this.breakAt(startMs);
    const to = this.breakAt(startMs + durationMs);
    for (let segment = from; segment < to; segment++) {
      for (let resource = 0; resource < this.resources; resource++) this.used[segment * this.resources + resource]! += demands[resource]!;
    }
  }
}
