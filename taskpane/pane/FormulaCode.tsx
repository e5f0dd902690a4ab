import { Fragment } from 'preact';

/** A formula that breaks after its brackets and separators, not inside a word. */
export function FormulaCode({ text }: { readonly text: string }) {
  return (
    <code class="pb-formula">
      {text.split(/(?<=[(,;])/).map((part, index) => (
        <Fragment key={index}>
          {part}
          <wbr />
        </Fragment>
      ))}
    </code>
  );
}
