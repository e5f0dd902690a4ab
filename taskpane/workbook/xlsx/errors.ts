/** What errors a cell can show; a word that is none of them is a text. */
const ERROR =
  /^#(?:NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A|SPILL!|CALC!|GETTING_DATA|BUSY!|FIELD!|BLOCKED!|CONNECT!|UNKNOWN!)$/;

export const isError = (text: string): boolean => ERROR.test(text);
