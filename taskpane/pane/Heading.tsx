import type { Ref } from 'preact';
import { useSetting } from './setting.js';

interface Props {
  /** 1 is the pane's own title. */
  readonly level: 1 | 2 | 3 | 4;
  readonly children: string;
  readonly id?: string;
  readonly class?: string;
  readonly lang?: string;
  readonly tabIndex?: number;
  readonly headingRef?: Ref<HTMLHeadingElement>;
}

/** A heading of the pane. Beside the embedded workbook, whose page has a title of its own, all stand one level lower. */
export function Heading({ level, headingRef, ...rest }: Props) {
  const { host } = useSetting();
  const Tag = `h${level + (host === 'embedded' ? 1 : 0)}` as 'h2';
  return <Tag ref={headingRef ?? null} {...rest} />;
}
