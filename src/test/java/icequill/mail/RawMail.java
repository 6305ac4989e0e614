package icequill.mail;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A mail, or a part of one, read line by line as RFC 5322, 2045, 2046, 2047 and 2231 have it, with nothing of the library that wrote it.
 *
 * @param head fields as they stand, unfolded, in order
 */
public record RawMail(List<String> head, String body) {

    private static final Pattern ENCODED_WORD = Pattern.compile("=[?]UTF-8[?]([BQ])[?]([^?]*)[?]=( +(?==[?]))?",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern EQUALS = Pattern.compile("=([0-9A-F]{2})");
    private static final Pattern PERCENT = Pattern.compile("%([0-9A-F]{2})");
    private static final Pattern NAME = Pattern.compile("filename(?:[*]([0-9]+))?([*]?)=(?:\"([^\"]*)\"|([^;]*))");

    public static RawMail of(String text) {
        int end = text.indexOf("\r\n\r\n");
        String head = text.substring(0, end).replaceAll("\r\n(?=[ \t])", "");
        return new RawMail(List.of(head.split("\r\n")), text.substring(end + 4));
    }

    /** The value of a field that stands there once. */
    public String field(String name) {
        List<String> found = head.stream().filter(line -> line.regionMatches(true, 0, name + ":", 0, name.length() + 1))
                .map(line -> line.substring(name.length() + 1).strip()).toList();
        if (found.size() != 1) {
            throw new AssertionError(found.size() + " fields " + name + " in " + head);
        }
        return found.get(0);
    }

    /** The value of a field for people. */
    public String words(String name) {
        Matcher word = ENCODED_WORD.matcher(field(name));
        StringBuilder words = new StringBuilder();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        int at = 0;
        while (word.find()) {
            words.append(field(name), at, word.start());
            byte[] some = word.group(1).equalsIgnoreCase("B")
                    ? Base64.getDecoder().decode(word.group(2))
                    : hex(EQUALS, word.group(2).replace('_', ' '));
            bytes.writeBytes(some);
            at = word.end();
            if (word.group(3) == null) {
                words.append(bytes.toString(StandardCharsets.UTF_8));
                bytes.reset();
            }
        }
        return words + field(name).substring(at);
    }

    public List<RawMail> parts() {
        Matcher boundary = Pattern.compile("boundary=\"([^\"]+)\"").matcher(field("Content-Type"));
        if (!boundary.find()) {
            throw new AssertionError(field("Content-Type"));
        }
        String[] parts = ("\r\n" + body).split(Pattern.quote("\r\n--" + boundary.group(1)), -1);
        if (!parts[parts.length - 1].startsWith("--")) {
            throw new AssertionError("no end: " + parts[parts.length - 1]);
        }
        return Arrays.stream(parts).skip(1).limit(parts.length - 2L).map(part -> of(part.substring(2))).toList();
    }

    public byte[] content() {
        return switch (field("Content-Transfer-Encoding")) {
        case "base64" -> Base64.getMimeDecoder().decode(body);
        case "quoted-printable" -> hex(EQUALS, body.replaceAll("=[ \t]*\r\n", ""));
        case "7bit" -> body.getBytes(StandardCharsets.US_ASCII);
        default -> throw new AssertionError(field("Content-Transfer-Encoding"));
        };
    }

    public String text() {
        return new String(content(), StandardCharsets.UTF_8);
    }

    /** In one piece or in several, encoded or not. */
    String fileName() {
        Map<Integer, String> pieces = new TreeMap<>();
        Matcher piece = NAME.matcher(field("Content-Disposition"));
        while (piece.find()) {
            int number = piece.group(1) == null ? 0 : Integer.parseInt(piece.group(1));
            pieces.put(number,
                    piece.group(3) != null ? piece.group(3) : (piece.group(2).isEmpty() ? "" : "*") + piece.group(4));
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        pieces.values().stream().flatMap(RawMail::plain).forEach(bytes::writeBytes);
        return bytes.toString(StandardCharsets.UTF_8);
    }

    private static Stream<byte[]> plain(String piece) {
        return Stream.of(piece.startsWith("*")
                ? hex(PERCENT, piece.substring(1).replaceFirst("^UTF-8''", ""))
                : piece.getBytes(StandardCharsets.US_ASCII));
    }

    private static byte[] hex(Pattern mark, String text) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Matcher sign = mark.matcher(text);
        int at = 0;
        while (sign.find()) {
            bytes.writeBytes(text.substring(at, sign.start()).getBytes(StandardCharsets.US_ASCII));
            bytes.write(Integer.parseInt(sign.group(1), 16));
            at = sign.end();
        }
        bytes.writeBytes(text.substring(at).getBytes(StandardCharsets.US_ASCII));
        return bytes.toByteArray();
    }

    /** Of each field only its name. */
    List<String> fieldNames() {
        return head.stream().map(line -> line.substring(0, line.indexOf(':'))).collect(Collectors.toList());
    }
}
