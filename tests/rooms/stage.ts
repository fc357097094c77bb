import { afterAll, afterEach, beforeAll, beforeEach } from 'vitest';
import type { ServerConfig } from '../../server/server.ts';
import { ownerCookie, type Page, pagesOfTest, type TestServer, testServer } from './harness.ts';

/** What the tests of a file work with. The server and its owner are there while a test runs, not before. */
export interface Stage {
  /** The address of the server. */
  readonly url: string;
  readonly ownerKey: string;
  /** The owner's cookie. */
  readonly owner: string;
  /** Pages put here are closed before the server ends. */
  readonly pages: Page[];
  /** Puts a page there that has said hello. */
  readonly page: ReturnType<typeof pagesOfTest>['page'];
}

/** A server with its owner, for all tests of a file together or for each of them. */
export function stage(serverFor: 'file' | 'test', config: Partial<ServerConfig> = {}): Stage {
  let server: TestServer;
  let owner: string;
  const { pages, page, closePages } = pagesOfTest();
  const [before, after] = serverFor === 'file' ? [beforeAll, afterAll] : [beforeEach, afterEach];
  before(async () => {
    server = await testServer(config);
    owner = await ownerCookie(server);
  });
  after(async () => {
    closePages();
    await server.end();
  });
  return {
    pages,
    page,
    get url() {
      return server.url;
    },
    get ownerKey() {
      return server.ownerKey;
    },
    get owner() {
      return owner;
    },
  };
}
