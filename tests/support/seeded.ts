import fc from "fast-check";

/** Every property is tried on the same cases each time; mutation testing, which runs thousands of times, tries fewer. */
fc.configureGlobal({ seed: 20270503, numRuns: Number(process.env.PROPERTY_RUNS ?? 100) });
