// Takes the place of the engine's hyphenation patterns of some eighty languages: cells of a sheet are never hyphenated,
// and where a language has no pattern the engine goes without.
export {};
