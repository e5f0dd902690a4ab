import find from '@univerjs/find-replace/locale/de-DE';
import filter from '@univerjs/sheets-filter/locale/de-DE';
import filterUi from '@univerjs/sheets-filter-ui/locale/de-DE';
import { LocaleType, mergeLocales } from '../core.js';

export const toolWords = { [LocaleType.DE_DE]: mergeLocales(find, filter, filterUi) };
