import type { ComponentChildren } from 'preact';
import { useEffect, useId, useRef } from 'preact/hooks';
import { useWords } from './words.js';

interface Props {
  readonly title: string;
  readonly confirm: string;
  /** Room for a table. */
  readonly wide?: boolean;
  readonly busy?: boolean;
  /** A third answer. */
  readonly other?: { readonly label: string; choose(): void };
  readonly children: ComponentChildren;
  onConfirm(): void;
  onClose(): void;
}

/** A question in the page; the safe answer has the focus, and Escape gives it. */
export function Dialog({ title, confirm, wide, busy, other, children, onConfirm, onClose }: Props) {
  const dialog = useRef<HTMLDialogElement>(null);
  const id = useId();
  const { cancel } = useWords().workbook;
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog
      ref={dialog}
      class={`workbook-dialog${wide ? ' workbook-dialog-wide' : ''}`}
      aria-labelledby={id}
      onClose={onClose}
    >
      <h2 id={id}>{title}</h2>
      {children}
      <form method="dialog" class="workbook-dialog-answers">
        {other && (
          <button type="submit" onClick={other.choose}>
            {other.label}
          </button>
        )}
        <button type="submit">{cancel}</button>
        <button type="submit" class="workbook-strong" disabled={busy} onClick={onConfirm}>
          {confirm}
        </button>
      </form>
    </dialog>
  );
}
