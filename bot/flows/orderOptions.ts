import { z } from "zod";
import type { OrderState } from "../../db/repositories/orders.ts";
import type { Option } from "../chat/defineCommand.ts";

export const orderOption: Option = { name: "order", summary: "Order number, such as 57", required: true, takes: "order" };

/** The same for a command that is of use in some states only. */
export const orderIn = (...first: readonly OrderState[]): Option => ({ ...orderOption, first });

/** What every command on an order takes; a button adds the version it was made for and what was picked. */
export const orderInput = {
  order: z.string().min(1).max(20),
  version: z
    .string()
    .regex(/^\d{1,9}$/)
    .transform(Number)
    .nullable()
    .default(null),
  argument: z.string().max(200).nullable().default(null),
};
