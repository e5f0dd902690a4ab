import { catalogue, families } from '../../../src/catalogue.js';
import { useSetting } from '../setting.js';
import { FamilySection } from './FamilySection.js';
import { search } from './search.js';

/** What a person did to the list; it outlives a visit to one of the functions. */
export interface ListState {
  readonly query: string;
  readonly onQuery: (query: string) => void;
  /** Names of the families that are open. */
  readonly opened: readonly string[];
  readonly onOpened: (names: readonly string[]) => void;
}

interface Props extends ListState {
  readonly onChoose: (id: string) => void;
}

export function FunctionList({ query, onQuery, opened, onOpened, onChoose }: Props) {
  const { texts, formats } = useSetting();
  const found = search(families, query, texts.say);
  const count = found.reduce((sum, { calculations }) => sum + calculations.length, 0);
  return (
    <>
      <div class="pb-search">
        <label for="pb-search">{texts.list.search}</label>
        <input
          id="pb-search"
          type="search"
          autocomplete="off"
          aria-describedby="pb-search-hint"
          value={query}
          onInput={(event) => onQuery(event.currentTarget.value)}
        />
        <p class="pb-quiet" id="pb-search-hint" hidden={query !== ''}>
          {texts.list.hint}
        </p>
        <p class="pb-quiet" role="status">
          {query && texts.list.count(formats.count(count), formats.count(catalogue.length))}
        </p>
      </div>
      {count === 0 && (
        <p>
          {texts.list.nothing}{' '}
          <button type="button" class="pb-link" onClick={() => onQuery('')}>
            {texts.list.clear}
          </button>
        </p>
      )}
      {found.map((family) => (
        <FamilySection
          // A search opens what it finds, whatever was open before.
          key={`${family.name} ${query !== ''}`}
          family={family}
          found={query !== ''}
          open={query !== '' || opened.includes(family.name)}
          onOpen={(open) => {
            if (query === '')
              onOpened([...opened.filter((name) => name !== family.name), ...(open ? [family.name] : [])]);
          }}
          onChoose={onChoose}
        />
      ))}
    </>
  );
}
