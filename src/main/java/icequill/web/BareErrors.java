package icequill.web;

import icequill.web.door.Doorkeeper;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;
import org.jspecify.annotations.Nullable;

/** Says of what is refused before any page sees it that it is, and nothing of what is within. */
final class BareErrors extends ErrorHandler {

    @Override
    protected void generateResponse(Request request, Response response, int code, @Nullable String message,
            @Nullable Throwable cause, Callback callback) {
        guard(response.getHeaders());
        response.write(true, words(code), callback);
    }

    @Override
    public ByteBuffer badMessageError(int status, @Nullable String reason, HttpFields.Mutable fields) {
        guard(fields);
        return words(status);
    }

    private static void guard(HttpFields.Mutable headers) {
        Doorkeeper.headers(headers::put);
        headers.put(HttpHeader.CONTENT_TYPE, "text/plain;charset=utf-8");
    }

    private static ByteBuffer words(int status) {
        return ByteBuffer.wrap((status + " " + HttpStatus.getMessage(status) + "\n").getBytes(StandardCharsets.UTF_8));
    }
}
