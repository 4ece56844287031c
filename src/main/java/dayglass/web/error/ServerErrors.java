package dayglass.web.error;

import dayglass.wire.JsonPrint;
import java.nio.ByteBuffer;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;

/** Answers what never reaches a handler: broken request lines, headers and addresses. */
final class ServerErrors extends ErrorHandler {
    @Override
    public boolean handle(Request request, Response response, Callback callback) {
        int status = response.getStatus();
        ProblemKind kind = ProblemKind.ofStatus(status);
        String detail = status < 500
                ? "The request could not be read as HTTP: check its first line, address and headers."
                : "The program failed at this request; its log says why.";
        response.setStatus(kind.status() == status ? status : kind == ProblemKind.FAILED ? 500 : 400);
        response.getHeaders().put(HttpHeader.CONTENT_TYPE, Errors.MEDIA_TYPE);
        byte[] body = JsonPrint.bytes(new Refusal(kind, detail).document());
        Content.Sink.write(response, true, ByteBuffer.wrap(body));
        callback.succeeded();
        return true;
    }
}
