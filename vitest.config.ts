import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    globalSetup: ['tests/setup/weights.ts'],
    testTimeout: 20_000,
    env: { FORCE_COLOR: '0' },
  },
});
