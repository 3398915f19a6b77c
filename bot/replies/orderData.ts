import type { Json } from "../chat/types.ts";
import type { ClubFacts, OrderFacts } from "../operations/orderFacts.ts";

/** What one club of an order comes to, unrounded. */
function clubData(club: ClubFacts): Readonly<Record<string, Json>> {
  const { plan, service } = club;
  if (plan !== null) {
    const { head, attitude, bend, mark } = plan.choice;
    return {
      headSerial: head.serial,
      sleeveMark: mark,
      squaredLoftDeg: attitude.squaredLoftDeg,
      soledFaceDeg: attitude.soledFaceDeg,
      seatedLieDeg: attitude.seatedLieDeg,
      loftChangeDeg: bend?.loftChangeDeg ?? 0,
      lieChangeDeg: bend?.lieChangeDeg ?? 0,
      headMassG: head.massG,
      ...plan.predicted,
    };
  }
  return service === null ? { headSerial: club.finished?.club.headSerial ?? null } : { ...service.predicted };
}

/** Every number the card shows, unrounded. */
export function orderData(facts: OrderFacts): Readonly<Record<string, Json>> {
  const [first] = facts.clubs;
  return {
    orderNumber: facts.number,
    orderId: facts.order,
    orderVersion: facts.version,
    state: facts.state,
    likelyAt: facts.likelyAt,
    promiseAt: facts.promiseAt,
    playableAt: facts.playableAt,
    byAt: facts.byAt,
    ...(first === undefined ? {} : clubData(first)),
    ...(facts.clubs.length > 1
      ? { clubs: facts.clubs.map((club) => ({ club: club.club, copyNumber: club.copy, likelyAt: club.likelyAt, ...clubData(club) })) }
      : {}),
  };
}
