import { readYaml } from '../reading/yaml.js';
import { type Kit, kitSchema } from './schema.js';

/**
 * Reads and checks a kit.
 *
 * @param file its name, for messages
 * @throws {ContentError} with every fault and its place
 */
export function readKit(text: string, file: string): Kit {
  return readYaml(text, kitSchema, { file, area: 'kit' }).data;
}
