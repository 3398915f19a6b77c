import { fileURLToPath } from "node:url";
import { instant } from "../../core/kinds.ts";

export const migrationsFolder = fileURLToPath(new URL("../../db/migrations", import.meta.url));
export const MONDAY = instant(Date.UTC(2027, 4, 3, 7));
