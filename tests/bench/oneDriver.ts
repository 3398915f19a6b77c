import type { Route, WaitFloors } from "../../core/bench/benchTypes.ts";
import { inSeries } from "../../core/bench/inSeries.ts";
import { defaultPace } from "../../core/bench/pace.ts";
import { readyTimes } from "../../core/bench/readyTimes.ts";
import { defaultFloors, routeFor } from "../../core/bench/routes.ts";
import { benchJob, benchWith, MIN, now } from "../core/bench/benchBuilders.ts";

const SAMPLES = 10_000;

const driver = (floors: WaitFloors = defaultFloors): Route => routeFor({ kind: "build", family: "driver", adjustable: true }, floors);

/** Prints when one driver on a sleeve is in hand: empty bench, one technician, the walk included, spreads fixed. */
function print(title: string, route: Route, quoted: string): void {
  const [ready] = readyTimes({ snapshot: benchWith([benchJob(1, route)]), pace: defaultPace, seed: 1, samples: SAMPLES });
  const minutes = (at: number | null | undefined): string => (at == null ? "none" : `${((at - now) / MIN).toFixed(0)} min`);
  console.log(`${title}: likely ${minutes(ready?.likelyAt)}, promise ${minutes(ready?.promiseAt)} (${quoted}, common practice, no source)`);
}

print("one driver, work during the waits", driver(), "quoted 25");
print("the same in series", inSeries(driver()), "about 31");
print("adhesive that sets in 10 min by its sheet", driver({ ...defaultFloors, adhesiveHandleMin: 10 }), "about 28");
