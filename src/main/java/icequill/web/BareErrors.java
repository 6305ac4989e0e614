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
        HttpFields.Mutable headers = response.getHeaders();
        Doorkeeper.headers(headers::put);
        headers.put(HttpHeader.CONTENT_TYPE, "text/plain;charset=utf-8");
        response.write(true, ByteBuffer.wrap((code + " " + HttpStatus.getMessage(code) + "\n")
                .getBytes(StandardCharsets.UTF_8)), callback);
    }

}
