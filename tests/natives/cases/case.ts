/** Cases of one family: a function's name, then its arguments as they are typed. */
export type Family = Readonly<Record<string, readonly string[]>>;
