import { TZDate } from "@date-fns/tz";
import { format } from "date-fns";
import type { Instant } from "../../core/kinds.ts";

/** An instant as text in a zone, by a date-fns pattern; the host's zone never matters. */
export const formatInTimeZone = (at: Instant, zone: string, pattern: string): string => format(new TZDate(at, zone), pattern);
