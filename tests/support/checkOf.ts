/**
 * Titles of a `describe` that holds one public function of core against something outside it. The page of sources is
 * made of these titles, so a check is listed exactly when it runs.
 */
type Checked = (...args: never[]) => unknown;

/** Against a table of `fixtures/published`: its name without the ending, and what it holds. */
export const byTable = (checked: Checked, file: string, table: { readonly source: string }): string =>
  `${checked.name} | table ${file} | ${table.source}`;

/** Against an independent general library: its name, and how it comes to the same number. */
export const byLibrary = (checked: Checked, library: string, how: string): string => `${checked.name} | library ${library} | ${how}`;

/** Against a law of nature or of arithmetic: a symmetry, a limit, a scaling, a sum; or against trying everything. */
export const byLaw = (checked: Checked, law: string): string => `${checked.name} | law | ${law}`;
