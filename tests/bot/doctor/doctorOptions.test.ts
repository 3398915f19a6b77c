import { describe, expect, it } from "vitest";
import { readDoctorOptions } from "../../../bot/doctor/doctorOptions.ts";

describe("readDoctorOptions", () => {
  it("looks at ./data and the chat unless told otherwise", () => {
    expect(readDoctorOptions([])).toEqual({ offline: false, json: false, data: "data" });
    expect(readDoctorOptions(["--offline", "--json", "--data", "week"])).toEqual({ offline: true, json: true, data: "week" });
  });

  it.each([[["--online"]], [["--data"]], [["--data", ""]], [["week"]]])("says in one line what %j could be", (args) => {
    expect(readDoctorOptions(args)).toEqual({ fault: expect.stringMatching(/^[^\n]*--data[^\n]*$/) });
  });
});
