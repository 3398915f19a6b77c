import { describe, expect, it } from "vitest";
import type { OrderFacts } from "../../../bot/operations/orderFacts.ts";
import type { OrderFault } from "../../../bot/operations/plannedClub.ts";
import { faultLines } from "../../../bot/replies/faultWords.ts";
import type { BuildRequest } from "../../../core/buildSheet/buildRequest.ts";
import type { ClubName } from "../../../core/kinds.ts";

type ClubFault = OrderFacts["faults"][number];

const noRecord: OrderFault = { code: "needs-record", kind: "bend", quantities: ["seatedLieDeg"] };
const noSleeve: OrderFault = { code: "no-sleeve", family: "iron" };
const of = (club: string, fault: OrderFault, copy = 1): ClubFault => ({ club: club as ClubName, copy, fault });
const lines = (faults: readonly ClubFault[], several: boolean) => faultLines({ faults, request: { like: null } as BuildRequest }, several);

describe("faultLines", () => {
  it("says nothing of no fault", () => {
    expect(lines([], true)).toEqual([]);
  });

  it("names no club where there is but one", () => {
    const [only, ...others] = lines([of("7i", noRecord)], false);
    expect(others).toEqual([]);
    expect(only).toMatch(/^lie /);
  });

  it("says what several clubs lack once, with all of them", () => {
    const said = lines([of("7i", noRecord), of("8i", noRecord), of("8i", noSleeve)], true);
    expect(said).toHaveLength(2);
    expect(said[0]).toMatch(/^7i, 8i: lie /);
    expect(said[1]).toMatch(/^8i: /);
  });

  it("tells one of several alike from the others, and names each once", () => {
    expect(lines([of("driver", noSleeve), of("driver", noSleeve, 2), of("driver", noSleeve)], true)).toEqual([
      expect.stringMatching(/^driver, driver 2: /),
    ]);
  });
});
