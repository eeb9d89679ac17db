// The JSON Schema of a rulebook as it is served: any JSON object.
import { z } from 'zod';

export const rulebookSchemaOutputSchema = z.record(z.string(), z.json());
