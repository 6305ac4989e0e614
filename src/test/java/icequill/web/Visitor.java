package icequill.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A browser that asks what it is told to.
 *
 * @param address of the office
 * @param cookie of its session, with its name; empty if it has none
 */
record Visitor(String address, Optional<String> cookie) {

    private static final HttpClient CLIENT = client();
    private static final Duration PATIENCE = Duration.ofSeconds(60);
    private static final Pattern KEY = Pattern.compile("name=\"key\" value=\"([^\"]+)\"");
    private static final Pattern COOKIE = Pattern.compile("[^;]+");
    /** As a browser marks what one of our own pages sends. */
    static final List<String> OWN_PAGE = List.of("Sec-Fetch-Site", "same-origin");

    /** It lets go of connections sooner than the office does: one that is closed just as it is taken fails. */
    private static HttpClient client() {
        System.setProperty("jdk.httpclient.keepalive.timeout", "10");
        return HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).connectTimeout(Duration.ofSeconds(20))
                .build();
    }

    /** The same with the session that a link opens. */
    Visitor enter(String link) {
        HttpResponse<String> answer = get(link.substring(address.length()));
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        Matcher first = COOKIE.matcher(answer.headers().firstValue("Set-Cookie").orElseThrow());
        assertThat(first.find()).isTrue();
        return new Visitor(address, Optional.of(first.group()));
    }

    HttpResponse<String> get(String path, String... headers) {
        return sent(request(path, List.of(headers)).GET().build());
    }

    /** The answer to a question that must have one, as JSON. */
    JsonNode json(String path) {
        HttpResponse<String> answer = get(path, "Accept", "application/json");
        assertThat(answer.statusCode()).as(path + answer.body()).isEqualTo(200);
        assertThat(answer.headers().firstValue("Content-Type")).contains("application/json");
        return JsonMapper.shared().readTree(answer.body());
    }

    /** A form that one of our own pages sends. */
    HttpResponse<String> post(String path, Map<String, String> fields) {
        return post(path, fields, OWN_PAGE);
    }

    HttpResponse<String> post(String path, Map<String, String> fields, List<String> headers) {
        return post(path, BodyPublishers.ofString(fields.entrySet().stream()
                .map(field -> field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"))), headers);
    }

    HttpResponse<String> post(String path, HttpRequest.BodyPublisher body, List<String> headers) {
        return sent(request(path, headers).header("Content-Type", "application/x-www-form-urlencoded").POST(body)
                .build());
    }

    /** A form of one of our own pages that is sent in another way. */
    HttpResponse<String> post(String path, HttpRequest.BodyPublisher body, String type) {
        return sent(request(path, OWN_PAGE).header("Content-Type", type).POST(body).build());
    }

    /** The key that the form of a page carries. */
    String key(String path) {
        String page = get(path).body();
        Matcher key = KEY.matcher(page);
        assertThat(key.find()).as(path + page).isTrue();
        return key.group(1);
    }

    private HttpRequest.Builder request(String path, List<String> headers) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(address + path)).timeout(PATIENCE);
        cookie.ifPresent(session -> request.header("Cookie", session));
        if (!headers.isEmpty()) {
            request.headers(headers.toArray(String[]::new));
        }
        return request;
    }

    private static HttpResponse<String> sent(HttpRequest request) {
        try {
            return CLIENT.send(request, BodyHandlers.ofString());
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(stopped);
        }
    }
}
