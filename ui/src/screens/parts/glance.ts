/** So many are read at a glance; the others stand behind their count. */
const GLANCE = 2;

/** What is shown of a list of sayings until the whole is asked for; one more is no reason to fold it. */
export const atGlance = <Saying>(all: readonly Saying[], whole: boolean): readonly Saying[] =>
  whole || all.length <= GLANCE + 1 ? all : all.slice(0, GLANCE);
