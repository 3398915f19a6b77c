/** A club, as far as others may want the same: the ids of the heads it may get, the one it would rather have first. */
interface Rival {
  readonly headIds: readonly number[];
}

type Group<T> = readonly T[];

/** The heads that matter to a group of m clubs: the best m of each. */
export const headsThatMatter = (group: Group<Rival>): ReadonlySet<number> => new Set(group.flatMap(({ headIds }) => headIds.slice(0, group.length)));

/** Groups to which one and the same head matters become one. */
function joined<T extends Rival>(groups: readonly Group<T>[]): readonly Group<T>[] {
  const leaders = groups.map((_, at) => at);
  const leaderOf = (at: number): number => {
    const leader = leaders[at] ?? at;
    return leader === at ? at : leaderOf(leader);
  };
  const firstWith = new Map<number, number>();
  groups.forEach((group, at) => {
    for (const headId of headsThatMatter(group)) {
      const first = firstWith.get(headId) ?? at;
      firstWith.set(headId, first);
      leaders[leaderOf(at)] = leaderOf(first);
    }
  });
  const members = new Map<number, T[]>();
  groups.forEach((group, at) => {
    const leader = leaderOf(at);
    members.set(leader, [...(members.get(leader) ?? []), ...group]);
  });
  return [...members.values()];
}

/**
 * Clubs in groups that can be served one by one: no head matters to two of them, and in a group of m clubs only the
 * best m heads of each matter. For a club that got another could move to one of its m that its own group left; whoever
 * sits there is of another group and has not one of its own best either, moves likewise, and all of them gain.
 */
export function rivalClubs<T extends Rival>(clubs: readonly T[]): readonly Group<T>[] {
  const grouped = (groups: readonly Group<T>[]): readonly Group<T>[] => {
    const fewer = joined(groups);
    return fewer.length === groups.length ? groups : grouped(fewer);
  };
  return grouped(clubs.map((club) => [club]));
}
