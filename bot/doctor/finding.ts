/** What one look found; the remedy is null where there is nothing to do. */
export interface Verdict {
  readonly state: "ok" | "warn" | "fault" | "skipped";
  readonly found: string;
  readonly remedy: string | null;
}

export interface Finding extends Verdict {
  readonly name: string;
}

export interface Check {
  readonly name: string;
  readonly look: () => Verdict | Promise<Verdict>;
}

export const ok = (found: string): Verdict => ({ state: "ok", found, remedy: null });
export const warn = (found: string, remedy: string): Verdict => ({ state: "warn", found, remedy });
export const fault = (found: string, remedy: string): Verdict => ({ state: "fault", found, remedy });
export const skipped = (why: string): Verdict => ({ state: "skipped", found: why, remedy: null });
