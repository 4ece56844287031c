package dayglass.web.error;

import dayglass.wire.Json;
import dayglass.wire.JsonPrint;
import dayglass.wire.Problem;
import java.nio.ByteBuffer;
import org.eclipse.jetty.http.HttpHeader;
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
        String detail = kind != ProblemKind.UNEXPECTED
                ? "The request could not be read as HTTP: check its first line, address and headers."
                : "The program failed at this request; its log says why.";
        Problem problem = kind.document(detail, Json.object().build());
        response.setStatus(problem.status());
        response.getHeaders().put(HttpHeader.CONTENT_TYPE, Problem.MEDIA_TYPE);
        byte[] body = JsonPrint.bytes(problem.toJson());
        response.write(true, ByteBuffer.wrap(body), callback);
        return true;
    }
}
