/** What a file's name cannot have in it somewhere. */
const UNFIT = /[<>:"/\\|?*\p{Cc}]/gu;
const LONGEST = 120;

const two = (number: number) => String(number).padStart(2, '0');

/** The name of a saved file: what it holds, and the day in the order that sorts (ISO 8601). */
export function fileName(content: string, day: Date): string {
  const date = [day.getFullYear(), two(day.getMonth() + 1), two(day.getDate())].join('-');
  const plain = content.replace(UNFIT, ' ').replace(/\s+/g, ' ').trim().slice(0, LONGEST);
  return `${plain} ${date}.xlsx`;
}
