/** Runes where no compiler has been: a state is its own value. For modules that keep what they read in a state, and nothing else. */
const state = Object.assign(<T>(value: T): T => value, { raw: <T>(value: T): T => value });
Object.assign(globalThis, { $state: state });
