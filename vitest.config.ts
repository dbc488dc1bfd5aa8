import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: { include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'], testTimeout: 20_000 },
});
