import fc from "fast-check";
import type { Activity, Project } from "../../../../core/bench/plan/project.ts";

const CAPACITIES = [1, 2, 3] as const;

const activity = fc.record({
  durationMs: fc.integer({ min: 1, max: 20 }),
  demands: fc.tuple(...CAPACITIES.map((capacity) => fc.nat(capacity))),
  earlier: fc.array(fc.nat(9), { maxLength: 2 }),
  releaseMs: fc.oneof(fc.constant(0), fc.nat(40)),
  due: fc.option(fc.record({ dueMs: fc.integer({ min: -10, max: 80 }), weight: fc.integer({ min: 1, max: 9 }) }), { nil: null }),
  byHand: fc.boolean(),
  running: fc.boolean(),
  group: fc.nat(3),
});

const activities = fc.array(activity, { minLength: 1, maxLength: 10 }).map((drawn) =>
  drawn.map(({ earlier, running, ...one }, at): Activity => {
    const before = earlier.filter((place) => place < at);
    return { ...one, before, underWay: running && at === 0 };
  }),
);

const open = fc
  .array(fc.record({ shutMs: fc.integer({ min: 1, max: 30 }), openMs: fc.integer({ min: 1, max: 60 }) }), { maxLength: 4 })
  .map((parts) => {
    let atMs = 0;
    return parts.map(({ shutMs, openMs }) => {
      const fromMs = atMs + shutMs;
      atMs = fromMs + openMs;
      return { fromMs, toMs: atMs };
    });
  });

/** Any project with three resources: release times, opening hours that may be too short, perhaps an activity under way. */
export const anyProject: fc.Arbitrary<Project> = fc
  .record({ activities, open: fc.option(open, { nil: null }) })
  .map((drawn) => ({ ...drawn, capacities: [...CAPACITIES] }));

/** The same without release times, opening hours and work under way. */
export const freeProject: fc.Arbitrary<Project> = anyProject.map(({ activities, capacities }) => ({
  capacities,
  open: null,
  activities: activities.map((one) => ({ ...one, releaseMs: 0, underWay: false })),
}));
