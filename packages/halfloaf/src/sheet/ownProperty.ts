/** A value of JSON-LD. */
export type JsonLdValue = string | number | boolean | JsonLd | readonly JsonLdValue[];
/** An item of JSON-LD. */
export interface JsonLd {
  readonly [key: string]: JsonLdValue;
}

/** What the `propertyID` of a property begins with that only this program reads. */
export const OWN_PREFIX = "halfloaf:";

/** A detail that schema.org has no property for. **Source**: schema.org, PropertyValue. */
export function ownProperty(name: string, value: string | number | boolean, more: JsonLd = {}): JsonLd {
  return { "@type": "PropertyValue", propertyID: `${OWN_PREFIX}${name}`, value, ...more };
}
