// The input of a call that takes none; anything sent along is refused.
import { z } from 'zod';

export const noInputSchema = z.strictObject({});
