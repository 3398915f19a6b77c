import { describe, expect, it } from "vitest";
import { equipmentRules } from "../../../core/rules/equipmentRules.ts";
import published from "../../../fixtures/published/equipmentRules.json" with { type: "json" };

const rules = [...equipmentRules.limits, ...equipmentRules.yesNo];

describe("equipmentRules", () => {
  it.each(rules.filter(({ code }) => published.rows.some((row) => row.code === code)))("cites for $code the page of a row", ({ code, source }) => {
    const pages = published.rows.filter((row) => row.code === code).map(({ address, opened }) => ({ address, opened }));
    expect(pages).toContainEqual({ address: source.address, opened: source.opened });
  });

  it("names a title, an edition and a rule's number with every row, and a page with all but those from memory", () => {
    for (const { code, rule, source, fromMemory } of rules) {
      expect(source.title, code).toMatch(/\w{4}/);
      expect(source.edition, code).toMatch(/\d{4}/);
      expect(rule, code).toMatch(/\d/);
      expect(source.address !== "" || fromMemory !== undefined, code).toBe(true);
    }
  });
});
