import type { CautionSource } from "./cautionTypes.ts";

/** Where cautions and their numbers stand. Pages by equipment makers by title only. */
export const cautionSources = {
  graphite: { title: "NIOSH, Graphite (natural): IDLH documentation, with the REL", address: "cdc.gov/niosh/idlh/7782425.html", opened: true },
  conducting: { title: "A weekly column on composites", address: "composite.about.com/library/weekly/aa981006.htm", opened: false },
  epoxyExposure: {
    title: "NIOSH, Assessing dermal exposures to epoxy resins in the windblade manufacturing industry",
    address: "stacks.cdc.gov/view/cdc/181318",
    opened: true,
  },
  epoxyGuide: { title: "CPWR, epoxy guide, 2008", address: "elcosh.org", opened: false },
  pulling: { title: "Graphite Shaft Removal, 2006", address: "", opened: true },
  workRest: {
    title: "OSHA Instruction STD 1-12.8, 29 CFR 1910.215(a)(4), Abrasive wheel machinery: work rests",
    address: "osha.gov/enforcement/directives/std-01-12-008",
    opened: true,
  },
  tongueGuard: { title: "Bench grinders, an insurer's sheet quoting OSHA", address: "valentgroup.com/bench-grinders-safety/", opened: false },
  wheelDust: { title: "HSE, SR21 Dust from abrasive wheels", address: "toxicdocs.org/d/vBqkVkEw4Qz22D3VB3ynJyJe6", opened: true },
  metalDust: { title: "Combustible metal dust explosions", address: "dustsafetyscience.com/combustible-metal-dust-explosions", opened: true },
  lead: { title: "NIOSH, Leave lead at work, 2024-101", address: "cdc.gov/niosh/docs/2024-101", opened: true },
} as const satisfies Readonly<Record<string, CautionSource>>;
