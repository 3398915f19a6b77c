import { describe, expect, it } from "vitest";
import { attendedTimes } from "../../../bot/operations/attendedTimes.ts";
import { id, instant } from "../../../core/kinds.ts";
import type { PressRow } from "../../../db/repositories/benchPresses.ts";

const at = (minutes: number) => instant(minutes * 60_000);
const [own, other] = [id<"order">(57), id<"order">(41)];
const [dessa, callan] = [id<"person">(1), id<"person">(2)];
const open = [
  { from: at(0), to: at(100) },
  { from: at(200), to: at(300) },
];

let count = 0;
const press = (kind: PressRow["press"], minute: number, personId = dessa, orderId = own): PressRow => ({
  id: id<"benchPress">(++count),
  orderId,
  press: kind,
  personId,
  at: at(minute),
});

/** Who is at it, and from when to when in minutes. */
function attended(presses: readonly PressRow[], now: number) {
  const { person, times } = attendedTimes(presses, own, open, at(now));
  return { person, times: times.map(({ from, to }) => [from / 60_000, to / 60_000]) };
}

describe("attendedTimes", () => {
  it("is nobody's before Start", () => {
    expect(attended([], 10)).toEqual({ person: null, times: [] });
    expect(attended([press("start", 1, dessa, other)], 10)).toEqual({ person: null, times: [] });
  });

  it("runs from the press that began the stage to now", () => {
    expect(attended([press("start", 5)], 12)).toEqual({ person: dessa, times: [[5, 12]] });
    expect(attended([press("start", 5), press("glueOn", 9, callan)], 12)).toEqual({ person: callan, times: [[9, 12]] });
    expect(attended([press("start", 5), press("glueOn", 9), press("done", 11)], 12)).toEqual({ person: dessa, times: [[11, 12]] });
  });

  it("stops at a press of theirs on another order, until the next press on this", () => {
    const away = [press("start", 5), press("start", 8, dessa, other)];
    expect(attended(away, 12)).toEqual({ person: dessa, times: [[5, 8]] });
    expect(attended([...away, press("glueOn", 10)], 12)).toEqual({ person: dessa, times: [[10, 12]] });
  });

  it("is not stopped by a colleague at another order, nor by what they leave", () => {
    expect(attended([press("start", 5), press("start", 8, callan, other)], 12).times).toEqual([[5, 12]]);
    expect(attended([press("start", 5), press("pause", 8, dessa, other)], 12).times).toEqual([[5, 12]]);
  });

  it("leaves out a pause and what was handed back, whoever takes it up", () => {
    const presses = [press("start", 5), press("pause", 7), press("resume", 20), press("handBack", 23)];
    expect(attended(presses, 30)).toEqual({
      person: null,
      times: [
        [5, 7],
        [20, 23],
      ],
    });
    expect(attended([...presses, press("resume", 40, callan)], 41)).toEqual({
      person: callan,
      times: [
        [5, 7],
        [20, 23],
        [40, 41],
      ],
    });
  });

  it("begins anew with a Resume of what did not rest: a step is done again", () => {
    expect(attended([press("start", 5), press("glueOn", 9), press("resume", 20)], 22).times).toEqual([[20, 22]]);
  });

  it("ends before now when its technician leaves at this very moment", () => {
    const { times } = attendedTimes([press("start", 5), press("pause", 12)], own, open, at(12));
    expect(times.at(-1)?.to).toBeLessThan(at(12));
    const { times: gone } = attendedTimes([press("start", 5), press("start", 12, dessa, other)], own, open, at(12));
    expect(gone.at(-1)?.to).toBeLessThan(at(12));
  });

  it("leaves out closed hours", () => {
    expect(attended([press("start", 95)], 210).times).toEqual([
      [95, 100],
      [200, 210],
    ]);
    expect(attended([press("start", 120)], 150).times).toEqual([]);
  });
});
