/** What a rep does in one round: the same every time it is played. `go` presses Go on the post of an order. */
export type DrillStep =
  | { readonly kind: "message"; readonly key: string; readonly message: string; readonly text: string }
  | { readonly kind: "go"; readonly key: string; readonly message: string };

export const drillSender = { platform: "rehearsal", platformId: "maren", roleIds: ["rep"] } as const;
export const drillChannel = "plover-orders";

const order = (message: string, text: string): DrillStep => ({ kind: "message", key: `message:${message}:0`, message, text });
const go = (message: string): DrillStep => ({ kind: "go", key: `press:${message}`, message });

/** Three orders: one drafted and confirmed, one confirmed by its own `go`, one whose press arrives twice. */
export const drillScript: readonly DrillStep[] = [
  order("d0", "build oxtoby driver like gamer\nby tue 12:00"),
  go("d0"),
  order("d1", "build toll driver like gamer, by tue 15:00 go"),
  order("d2", "swap dravick driver like gamer\nby tue 16:00"),
  go("d2"),
  go("d2"),
];

/** The messages that must each be one confirmed order in the end. */
export const drillMessages: readonly string[] = ["d0", "d1", "d2"];
