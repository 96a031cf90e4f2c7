import openapiTS, { astToString } from 'openapi-typescript';
import { openApiDocument } from './document.ts';

/** The two files kept in the tree, as text: the document and the types made from it. */
export const renderContracts = async (): Promise<{ document: string; types: string }> => {
  const document = `${JSON.stringify(openApiDocument(), null, 2)}\n`;
  const heading = '// Made from openapi.json by `npm run -w @ballfirst/api openapi`. Do not edit.\n';
  const types = heading + astToString(await openapiTS(document, { alphabetize: false }));
  return { document, types };
};
