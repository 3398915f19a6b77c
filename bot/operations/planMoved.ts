/** Thrown inside the transaction so that nothing of a half-held plan stays. */
export class PlanMoved extends Error {
  readonly parts: readonly string[];
  constructor(parts: readonly string[]) {
    super("a part of the plan is no longer free");
    this.parts = parts;
  }
}
