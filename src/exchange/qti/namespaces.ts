import type { Attributes } from './xml.js';

/** A namespace of the standard, and where its schema is published. */
export interface Schema {
  readonly namespace: string;
  readonly published: string;
}

/** Items and tests: 1EdTech, QTI 3.0 Assessment, Section and Item. */
export const ITEM_SCHEMA: Schema = {
  namespace: 'http://www.imsglobal.org/xsd/imsqtiasi_v3p0',
  published: 'https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqti_asiv3p0_v1p0.xsd',
};

/** The list of what is in a package: IMS Content Packaging 1.2 as QTI 3.0 uses it. */
export const PACKAGE_SCHEMA: Schema = {
  namespace: 'http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1',
  published: 'https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqtiv3p0_imscpv1p2_v1p0.xsd',
};

/** The attributes by which a root element says its namespace and schema. */
export function inNamespace({ namespace, published }: Schema): Attributes {
  return {
    xmlns: namespace,
    'xmlns:xsi': 'http://www.w3.org/2001/XMLSchema-instance',
    'xsi:schemaLocation': `${namespace} ${published}`,
  };
}
