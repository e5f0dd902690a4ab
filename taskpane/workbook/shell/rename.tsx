import { useLayoutEffect, useRef } from 'preact/hooks';
import { useWords } from './words.js';

/** The name of a sheet as it is typed; Enter or leaving the field keeps it, Escape does not. */
export function RenameField({ name, onDone }: { name: string; onDone(name: string | undefined): void }) {
  const field = useRef<HTMLInputElement>(null);
  const done = useRef(false);
  const words = useWords().workbook.tabs;
  // Before the next key can be pressed.
  useLayoutEffect(() => {
    field.current?.focus();
    field.current?.select();
  }, []);
  const finish = (answer: string | undefined) => {
    // Removing the field takes the focus from it, which would answer a second time.
    if (done.current) return;
    done.current = true;
    onDone(answer);
  };
  const key = ({ key: pressed, currentTarget }: KeyboardEvent) => {
    if (pressed === 'Enter') finish((currentTarget as HTMLInputElement).value.trim());
    if (pressed === 'Escape') finish(undefined);
  };
  return (
    <input
      ref={field}
      class="workbook-rename"
      aria-label={words.name}
      // Not the value: each time the page is drawn anew that would take back what was typed.
      defaultValue={name}
      onKeyDown={key}
      onBlur={({ currentTarget }) => finish(currentTarget.value.trim())}
    />
  );
}
