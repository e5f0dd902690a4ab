import type { ComponentChildren } from 'preact';
import { useEffect, useId, useRef } from 'preact/hooks';
import { useWords } from './words.js';

interface Props {
  readonly title: string;
  readonly confirm: string;
  readonly children: ComponentChildren;
  onConfirm(): void;
  onClose(): void;
}

/** A question in the page; the safe answer has the focus, and Escape gives it. */
export function Dialog({ title, confirm, children, onConfirm, onClose }: Props) {
  const dialog = useRef<HTMLDialogElement>(null);
  const id = useId();
  const { cancel } = useWords().workbook;
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog ref={dialog} class="workbook-dialog" aria-labelledby={id} onClose={onClose}>
      <h2 id={id}>{title}</h2>
      {children}
      <form method="dialog" class="workbook-dialog-answers">
        <button type="submit">{cancel}</button>
        <button type="submit" class="workbook-strong" onClick={onConfirm}>
          {confirm}
        </button>
      </form>
    </dialog>
  );
}
