/** The platform under whose handles a loaded week knows its people, in the rehearsal and, joined by the settings, in the real chat. */
export const WEEK_PLATFORM = "rehearsal";
