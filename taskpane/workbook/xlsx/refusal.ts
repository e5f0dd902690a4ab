/** Stops the reading of a file from any depth; nothing outside this folder sees it. */
export class Refusal extends Error {}
