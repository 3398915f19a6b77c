import { createRequire } from "node:module";
import type { Highs } from "highs";
import { describe, expect, it } from "vitest";
import { planProject } from "../../../../core/bench/plan/planProject.ts";
import type { Project } from "../../../../core/bench/plan/project.ts";
import { byLaw, byLibrary } from "../../../support/checkOf.ts";
import { disjunctiveProgramme, dueShop, leastTardiness, smallShop } from "./exactShops.ts";
import { faultsOf } from "./faultsOf.ts";

/** The package's types are those of its CommonJS build. */
const loadHighs: () => Promise<Highs> = createRequire(import.meta.url)("highs");
const seeds = Array.from({ length: 60 }, (_, seed) => seed + 1);
/** A shop of at most twelve activities has few active schedules: a sane search meets the best of them in nearly every shop. */
const LEAST_SHARE_EQUAL = 0.95;

/** Plans are feasible and never below the proven optimum; gives the share of those that are as good. */
function shareEqual(shops: readonly { readonly project: Project; readonly optimum: number }[], goal: "makespan" | "weightedTardiness"): number {
  const equal = shops.filter(({ project, optimum }) => {
    const { startsMs, value } = planProject(project, { schedules: 500, seed: 1, goal });
    expect(faultsOf(project, startsMs)).toEqual([]);
    expect(value).toBeGreaterThanOrEqual(optimum - 1e-6);
    return value <= optimum + 1e-6;
  });
  return equal.length / shops.length;
}

describe(byLibrary(planProject, "highs", "makespans of small shops, proven by a mixed-integer programme"), () => {
  it("is never better than the optimum and nearly always as good", async () => {
    const highs = await loadHighs();
    const shops = seeds.map((seed) => {
      const project = smallShop(seed);
      const solved = highs.solve(disjunctiveProgramme(project), { output_flag: false });
      expect(solved.Status).toBe("Optimal");
      return { project, optimum: Math.round(solved.ObjectiveValue) };
    });
    const share = shareEqual(shops, "makespan");
    console.log(`small shops: ${(100 * share).toFixed(0)} % of ${shops.length} plans end as soon as the proven optimum, at 500 schedules`);
    expect(share).toBeGreaterThanOrEqual(LEAST_SHARE_EQUAL);
  });
});

describe(byLaw(planProject, "no order of the activities has less weighted tardiness: all of them tried on small shops"), () => {
  it("is never better than the best order and nearly always as good", () => {
    const shops = seeds.map(dueShop).map((project) => ({ project, optimum: leastTardiness(project) }));
    const share = shareEqual(shops, "weightedTardiness");
    console.log(`small shops: ${(100 * share).toFixed(0)} % of ${shops.length} plans are as little late as the best order, at 500 schedules`);
    expect(share).toBeGreaterThanOrEqual(LEAST_SHARE_EQUAL);
  });
});
