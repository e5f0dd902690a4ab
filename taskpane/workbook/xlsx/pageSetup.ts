/** Attributes of one element, as the file has them. */
export type Attributes = Readonly<Record<string, string>>;

/** The set-up of a sheet's print, in the words of the file format; what is absent was not said. */
export interface PageSetup {
  /** Whether it is made to fit a number of pages. */
  readonly fits?: true;
  /** Paper, direction, scale, pages. */
  readonly paper?: Attributes;
  readonly margins?: Attributes;
  readonly options?: Attributes;
  /** Words above and below, by the element that holds them. */
  readonly words?: Attributes;
  /** The places that are printed, where it is not all; whole rows and columns among them, such as `1:40`. */
  readonly areas?: readonly string[];
  /** The last of them ends with a list, and goes on to the last row that is filled in. Files have no word for it. */
  readonly grows?: true;
  /** Rows and columns that are repeated on each page, such as `1:2` and `A:A`. */
  readonly rows?: string;
  readonly columns?: string;
  /** The rows above which, and the columns to the left of which, a new page begins, from 0. */
  readonly rowBreaks?: readonly number[];
  readonly columnBreaks?: readonly number[];
}
