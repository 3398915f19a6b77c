import { expect, it } from "vitest";
import { readMessage } from "../../../bot/boundary/readMessage.ts";
import { readingContext } from "../../../bot/desk/readingContext.ts";
import { planOrder } from "../../../bot/operations/planOrder.ts";
import { allTrucks } from "../../../db/repositories/people.ts";
import { head, reservation } from "../../../db/schema/stock.ts";
import { eq } from "drizzle-orm";
import { demoWeek } from "../../support/demoWeek.ts";
import { venueTime } from "../../support/readCard.ts";

const texts = `build oxtoby driver like gamer loft 9.25, face 0.5 open, length 45 1/4 swing d3
build wexcombe driver like gamer
build halloway driver like gamer loft 10
build halloway driver like gamer loft 9.4 face 1 open swing d3
build pellwether driver like gamer, head cairn 9 loft 9.4 face 1 open
build pellwether driver like gamer, stamped 9
build toll driver like gamer, head 8
build toll driver like gamer loft 6.5
build toll 3w like gamer loft 14.5
build halloway 3w like gamer sleeve strong 1
build prysallt 7w like gamer
build oxtoby 5w like gamer stamped 18 sleeve weak ½
build brandlow 3h like gamer loft 19.5
build eddlethorn 3h like gamer swing d4
build linnea 3h like gamer loft 18.5
build toll 7i like gamer
build halloway 7i like gamer loft 36 lie 59
build quarrie 7i like gamer lie 63.5
build mundoora 5i like gamer headweight 262
build oxtoby sw like gamer loft 55 bounce 8
build toll lw like gamer grind heel-relieved bounce 7
build toll lw like gamer head tarn heel-relieved loft 59 bounce 7
build halloway lw like gamer loft 58.5
build wexcombe sw like gamer loft 57
build oxtoby putter like gamer headweight 352
build halloway putter like gamer
build halloway putter like gamer swing d5
swap linnea driver like gamer
swap toll driver head cairn 9 loft 9.0
swap oxtoby 3w loft 14.4 face 0.2 open
build halloway driver like gamer stamped 12
build halloway lw like gamer, grind wide
build halloway lw like gamer, head tarn wide
build oxtoby 7i like gamer sleeve strong 1
build halloway sw like gamer head tarn heel-relieved`.split("\n");

it("explores", async () => {
  const { db, close } = await demoWeek();
  const now = venueTime("2027-05-03T10:30");
  const truckId = allTrucks(db).find(({ name }) => name === "Plover")!.id;
  const context = readingContext(db, { person: null, name: "", roles: [], truck: truckId, zone: "Europe/Lisbon", ownZone: "Europe/Lisbon", lengthUnit: "in" }, now);
  console.log(db.select({ serial: head.serial, state: reservation.state }).from(reservation).innerJoin(head, eq(head.id, reservation.headId)).all());
  for (const text of texts) {
    const reading = readMessage(text, context);
    if (reading.kind !== "order") { console.log(text, JSON.stringify(reading)); continue; }
    const t0 = performance.now();
    const [p] = planOrder(db, { request: reading.request, truckId, now });
    const t = p?.plan?.target;
    const c = p?.plan?.choice;
    console.log(text, (performance.now() - t0).toFixed(0), "ms\n   ", t ? [t.headModel, t.hand, "st", t.stampedLoftDeg, "sq", t.squaredLoftDeg, "f", t.soledFaceDeg, "lie", t.seatedLieDeg, "b", t.bounceDeg, t.grind, "mark", t.sleeveMark, "sw", t.swingWeightPoints, "hm", t.headMassG, "len", t.lengthMm].join(" ") : JSON.stringify(p?.faults), "\n   ",
      c ? [c.head.serial, c.mark, c.score.toFixed(3), c.misses.map((m) => m.quantity).join("+"), JSON.stringify(c.bend), c.addedCount, p?.plan?.headMassWantedG].join(" ") : "", JSON.stringify(p?.beside));
  }
  close();
  expect(1).toBe(1);
});
