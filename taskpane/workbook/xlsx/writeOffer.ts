import { element, part } from './writeXml.js';

/** The add-in that a file offers when it is opened: the id and version of its manifest. */
export interface Offer {
  readonly id: string;
  readonly version: string;
}

const WETP = 'http://schemas.microsoft.com/office/webextensions/taskpanes/2010/11';
const WE = 'http://schemas.microsoft.com/office/webextensions/webextension/2010/11';
const R = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const RELATIONSHIPS = 'http://schemas.openxmlformats.org/package/2006/relationships';

export const OFFER_TYPES: Readonly<Record<string, string>> = {
  '/xl/webextensions/taskpanes.xml': 'application/vnd.ms-office.webextensiontaskpanes+xml',
  '/xl/webextensions/webextension.xml': 'application/vnd.ms-office.webextension+xml',
};

export const OFFER_RELATION = 'http://schemas.microsoft.com/office/2011/relationships/webextensiontaskpanes';

/** The parts that make Excel offer the add-in, from a catalogue of the company or a shared folder. */
export function offerParts({ id, version }: Offer): Readonly<Record<string, string>> {
  const reference = element('we:reference', { id, version, store: 'EXCatalog', storeType: 'EXCatalog' });
  return {
    'xl/webextensions/taskpanes.xml': part(
      element(
        'wetp:taskpanes',
        { 'xmlns:wetp': WETP },
        element(
          'wetp:taskpane',
          { dockstate: 'right', visibility: 0, width: 350, row: 1 },
          element('wetp:webextensionref', { 'xmlns:r': R, 'r:id': 'rId1' }),
        ),
      ),
    ),
    'xl/webextensions/_rels/taskpanes.xml.rels': part(
      element(
        'Relationships',
        { xmlns: RELATIONSHIPS },
        element('Relationship', {
          Id: 'rId1',
          Type: 'http://schemas.microsoft.com/office/2011/relationships/webextension',
          Target: 'webextension.xml',
        }),
      ),
    ),
    'xl/webextensions/webextension.xml': part(
      element(
        'we:webextension',
        { 'xmlns:we': WE, id: `{${id}}` },
        reference,
        element('we:alternateReferences'),
        element('we:properties'),
        element('we:bindings'),
        element('we:snapshot', { 'xmlns:r': R }),
      ),
    ),
  };
}
