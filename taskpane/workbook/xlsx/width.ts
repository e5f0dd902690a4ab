/** The room on both sides that a file counts into the width of a column, in characters. */
const ROOM = 0.71;

const rounded = (width: number) => Math.round(width * 100) / 100;

/** A width as a file states it, from the characters that have room, and back. */
export const widthInFile = (characters: number): number => rounded(characters + ROOM);
export const charactersInFile = (width: number): number => rounded(width - ROOM);
