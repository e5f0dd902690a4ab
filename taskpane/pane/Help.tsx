import { CAUTIONS } from '../../src/cautions.js';
import { Heading } from './Heading.js';
import { useSetting } from './setting.js';

/** What errors, blanks and shares mean here, and every caution in full. */
export function Help() {
  const { texts, host } = useSetting();
  const { help } = texts;
  const notes = [
    [help.busy, help.busyText],
    [help.blank, help.blankText],
    [help.shares, help.sharesText],
    [help.limits, help.limitsText],
    [help.columns, help.columnsText],
    [help.loading, help.loadingText],
    [help.sharing, help.sharingText],
  ] as const;
  return (
    <div class="pb-prose">
      <Heading level={2}>{help.errors}</Heading>
      <dl>
        {Object.entries(help.error).map(([error, meaning]) => (
          <div key={error}>
            <dt>
              <code>{error}</code>
            </dt>
            <dd>{meaning}</dd>
          </div>
        ))}
      </dl>
      <p>{host === 'excel' ? help.whereExcel : help.whereEmbedded}</p>
      {notes.map(([title, text]) => (
        <section key={title}>
          <Heading level={2}>{title}</Heading>
          <p>{text}</p>
        </section>
      ))}
      <section class="pb-caution">
        <Heading level={2}>{help.cautions}</Heading>
        {Object.values(CAUTIONS).map((caution) => (
          <p key={caution} lang="en">
            {caution}
          </p>
        ))}
      </section>
      <section>
        <Heading level={2}>{help.about}</Heading>
        <p>{help.aboutText}</p>
        <p>
          <a href="licences.txt" target="_blank" rel="noopener">
            {help.licences}
          </a>
        </p>
      </section>
    </div>
  );
}
