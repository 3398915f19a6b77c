import type { SpecClub } from "../../../core/bag/specClub.ts";
import type { bendAllowed } from "../../../core/head/bendAllowed.ts";
import { usuallyMade } from "../../../core/head/usuallyMade.ts";
import { clubFamily } from "../../../core/kinds.ts";
import { degrees } from "../../../core/quantity/units.ts";
import { assumed, type Understood } from "../../boundary/calc/fields.ts";
import type { BendWords } from "../../boundary/calc/readBend.ts";

export interface HeadMade {
  readonly head: Parameters<typeof bendAllowed>[0];
  readonly assumed: readonly Understood[];
}

/** What the head is made of and was bent before; what nobody wrote is assumed of its kind, and said. */
export function headMade(values: BendWords, club: SpecClub | null): HeadMade {
  const family = values.club ?? (club === null ? null : clubFamily(club.club));
  const usual = usuallyMade[family ?? "iron"];
  const { material = usual.material, construction = usual.construction } = values;
  const bent = (name: "bent" | "bent lie") => (values[name] ?? []).map(({ value }) => degrees(value));
  const still = degrees(0);
  return {
    head: {
      material,
      construction,
      history: [
        ...bent("bent").map((loftChangeDeg) => ({ loftChangeDeg, lieChangeDeg: still })),
        ...bent("bent lie").map((lieChangeDeg) => ({ loftChangeDeg: still, lieChangeDeg })),
      ],
      makerLimitDeg: values.maker === undefined ? null : degrees(values.maker.value),
      skilledTechnician: values.technician === "skilled",
    },
    assumed: [
      ...(values.material === undefined ? [assumed("material", material === "other" ? "not told" : material, "")] : []),
      ...(values.construction === undefined ? [assumed("construction", construction, "")] : []),
      ...(values.bent === undefined && values["bent lie"] === undefined ? [assumed("never bent before", "", "")] : []),
    ],
  };
}
