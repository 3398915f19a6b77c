/** What one request of the bot looks like from outside. */
export interface Asked {
  readonly method: string;
  /** Without the version: `/channels/3…/messages?limit=100`. */
  readonly path: string;
  readonly body: Readonly<Record<string, unknown>>;
  readonly files: readonly { readonly name: string; readonly bytes: Uint8Array }[];
}

/** What goes wrong with a request: refused, lost before or after its effect, never answered, or put off. */
export type Fault =
  | { readonly kind: "status"; readonly status: number; readonly when: "before" | "after" }
  | { readonly kind: "hang" | "reset"; readonly when: "before" | "after" }
  | { readonly kind: "slow down"; readonly scope: "user" | "global"; readonly afterS: number };

export interface FaultPlan {
  /** The next so many requests that fit meet this fault. */
  readonly next: (fits: (asked: Asked) => boolean, fault: Fault, times?: number) => void;
  /** Asked for every request without a planned fault; null undoes it. */
  readonly always: (chance: ((asked: Asked) => Fault | null) | null) => void;
  readonly of: (asked: Asked) => Fault | null;
}

export function faultPlan(): FaultPlan {
  const planned: { readonly fits: (asked: Asked) => boolean; readonly fault: Fault; left: number }[] = [];
  let chance: ((asked: Asked) => Fault | null) | null = null;
  return {
    next: (fits, fault, times = 1) => void planned.push({ fits, fault, left: times }),
    always: (asked) => {
      chance = asked;
    },
    of: (asked) => {
      const found = planned.find(({ fits, left }) => left > 0 && fits(asked));
      if (found === undefined) {
        return chance?.(asked) ?? null;
      }
      found.left -= 1;
      return found.fault;
    },
  };
}
