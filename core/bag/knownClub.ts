import { DomainError } from "../errors.ts";
import { type ClubName, clubFamily } from "../kinds.ts";

/**
 * A club whose name belongs to a family.
 *
 * @param club - as it came
 * @returns the same club
 * @throws {DomainError} `quantity-unreadable` when no club is called so
 */
export function knownClub<T extends { readonly club: ClubName }>(club: T): T {
  if (clubFamily(club.club) === null) {
    throw new DomainError("quantity-unreadable", { field: "club", written: String(club.club), accepted: "driver, 3w, 4h, 7i, pw, putter" });
  }
  return club;
}
