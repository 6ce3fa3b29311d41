import { protocol, type Session } from 'electron';
import log from 'electron-log/main';
import { readPaperPath } from '#main/host/paper-path.ts';
import { writeDisposition, writeSafeHeaders } from '#main/host/page-safety.ts';
import { readRendererFile } from '#main/host/renderer-files.ts';
import type { Paper } from '#main/host/served-desk.ts';
import { parseOurs, scheme } from './address.ts';

/** Makes the scheme a full origin: relative addresses, modules and fetch work in it. Has to run before `app` is ready. */
export function declareScheme(): void {
  protocol.registerSchemesAsPrivileged([
    { scheme, privileges: { standard: true, secure: true, supportFetchAPI: true, stream: true } },
  ]);
}

/** Serves the built renderer and the stored papers under the scheme. */
export function serveScheme(
  session: Session,
  rendererFolder: string,
  readPaper: (kind: string, id: string) => Promise<Paper | null>,
): void {
  session.protocol.handle(scheme, async (request) => {
    const url = parseOurs(request.url);
    if (url === null || request.method !== 'GET') return answerPlainly(404, 'There is nothing here.');
    const address = readPaperPath(url.pathname);
    try {
      if (address === null) {
        const file = await readRendererFile(rendererFolder, url.pathname);
        if (file === null) return answerPlainly(404, 'There is nothing here.');
        return new Response(file.bytes, { headers: writeSafeHeaders(file.type) });
      }
      const paper = await readPaper(address.kind, address.id);
      if (paper === null) return answerPlainly(404, 'There is no such paper.');
      const disposition = writeDisposition(url.searchParams.has('download') ? 'attachment' : 'inline', paper.name);
      return new Response(paper.bytes, {
        headers: { ...writeSafeHeaders(paper.type), 'content-disposition': disposition },
      });
    } catch (error) {
      log.error('serving', url.pathname, error);
      return answerPlainly(503, 'This cannot be read just now.');
    }
  });
}

function answerPlainly(status: number, sentence: string): Response {
  return new Response(sentence, { status, headers: writeSafeHeaders('text/plain; charset=utf-8') });
}
