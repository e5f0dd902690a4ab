import find from '@univerjs/find-replace/locale/en-US';
import filter from '@univerjs/sheets-filter/locale/en-US';
import filterUi from '@univerjs/sheets-filter-ui/locale/en-US';
import { LocaleType, mergeLocales } from '../core.js';

export const toolWords = { [LocaleType.EN_US]: mergeLocales(find, filter, filterUi) };
