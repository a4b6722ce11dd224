// What fast-check does where a test says nothing else.
import fc from "fast-check";
import { seedOf, tries } from "./scale.ts";

fc.configureGlobal({ numRuns: tries(100), seed: seedOf(20_261_125) });
