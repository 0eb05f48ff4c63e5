import { inNamespace, PACKAGE_SCHEMA } from './namespaces.js';
import { element, xmlDocument } from './xml.js';

/** One file of a package, and those that it needs beside it. */
export interface Resource {
  readonly identifier: string;
  readonly type: 'imsqti_item_xmlv3p0' | 'imsqti_test_xmlv3p0' | 'webcontent';
  readonly href: string;
  /** Identifiers of other resources. */
  readonly needs: readonly string[];
}

/** The list of all that is in a package. */
export function manifest(identifier: string, resources: readonly Resource[]): string {
  return xmlDocument(
    element(
      'manifest',
      { ...inNamespace(PACKAGE_SCHEMA), identifier },
      element('metadata', {}, element('schema', {}, 'QTI Package'), element('schemaversion', {}, '3.0.0')),
      element('organizations'),
      element(
        'resources',
        {},
        ...resources.map(({ identifier, type, href, needs }) =>
          element(
            'resource',
            { identifier, type, href },
            element('file', { href }),
            ...needs.map((identifierref) => element('dependency', { identifierref })),
          ),
        ),
      ),
    ),
  );
}
