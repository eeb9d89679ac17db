import { defineConfig } from 'drizzle-kit';

/** `npx drizzle-kit generate --config db/drizzle.config.ts`; then write STRICT and the triggers into the new file by hand. */
export default defineConfig({ dialect: 'sqlite', casing: 'snake_case', schema: './db/schema-*.ts', out: './db/migrations' });
