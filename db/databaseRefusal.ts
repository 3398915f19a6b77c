/** Why a database is not opened, by code, with what is known about it. */
interface RefusalFacts {
  /** No file where one is expected: a lost file never becomes an empty database silently. */
  missing: { readonly path: string };
  /** A file of no bytes: the same, with a file. */
  empty: { readonly path: string };
  /** A database of another program. */
  foreign: { readonly path: string; readonly applicationId: number };
  /** A restored database never takes the place of another file. */
  occupied: { readonly path: string };
  /** Not a database, or not to be read. */
  unreadable: { readonly path: string; readonly reason: string };
  damaged: { readonly path: string; readonly found: readonly string[] };
  /** Another process has it open. */
  locked: { readonly path: string };
  "read-only": { readonly path: string; readonly reason: string };
  "disk-full": { readonly path: string };
  /** A migration that was applied is not the one in the folder. */
  "migration-changed": { readonly migration: string };
  /** The database has seen migrations that this program does not know. */
  newer: { readonly applied: number; readonly known: number };
  /** Timestamps do not rise: one of the migrations would be passed over. */
  "migration-order": { readonly migration: string };
  "migration-failed": { readonly reason: string; readonly backup: string | null };
  pragma: { readonly pragma: string; readonly wanted: string; readonly got: string };
  "audit-broken": { readonly seq: number; readonly reason: string };
}

type RefusalCode = keyof RefusalFacts;

const lines: { readonly [C in RefusalCode]: (facts: RefusalFacts[C]) => string } = {
  missing: ({ path }) => `There is no database at ${path}. Restore the newest backup there, or ask for a new one to be created.`,
  empty: ({ path }) => `The file at ${path} is empty. Restore the newest backup, or move the file away and ask for a new one.`,
  foreign: ({ path, applicationId }) => `The file at ${path} belongs to another program (application id ${applicationId}). Nothing was changed.`,
  occupied: ({ path }) => `There is a file at ${path} already. Restore to a new path; the file stays as it is.`,
  unreadable: ({ path, reason }) => `The file at ${path} cannot be read as a database: ${reason}.`,
  damaged: ({ path, found }) => `The database at ${path} is damaged: ${found.slice(0, 3).join("; ")}. Keep the file and restore the newest backup.`,
  locked: ({ path }) => `The database at ${path} is in use by another process. Stop that one first.`,
  "read-only": ({ path, reason }) => `The database at ${path} cannot be written: ${reason}. Check the rights of the file and of its folder.`,
  "disk-full": ({ path }) => `There is no room left on the disk of ${path}.`,
  "migration-changed": ({ migration }) => `Migration ${migration} was edited after this database had applied it. Restore it as it was.`,
  newer: ({ applied, known }) => `The database has ${applied} migrations applied, this program knows ${known}. Start the newer program.`,
  "migration-order": ({ migration }) => `Migration ${migration} is not later than the one before it and would be passed over. Generate it anew.`,
  "migration-failed": ({ reason, backup }) => `The database could not be brought up to date: ${reason}. Backup taken before: ${backup ?? "none"}.`,
  pragma: ({ pragma, wanted, got }) => `The database refused a setting: ${pragma} is ${got} and has to be ${wanted}.`,
  "audit-broken": ({ seq, reason }) => `The audit does not verify at entry ${seq}: ${reason}. Keep the file and compare it with a backup.`,
};

/** A database that must not be worked on: code and facts for a program, one plain line for a person. */
export class DatabaseRefusal<C extends RefusalCode = RefusalCode> extends Error {
  readonly code: C;
  readonly facts: RefusalFacts[C];
  constructor(code: C, facts: RefusalFacts[C], cause?: unknown) {
    super(lines[code](facts), { cause });
    this.name = "DatabaseRefusal";
    this.code = code;
    this.facts = facts;
  }
}
