package icequill.mail;

import java.nio.charset.StandardCharsets;

/** The name of a file that goes with a mail, as a parameter of a header field (RFC 2231). */
final class FileName {

    /** Of one line, so that with what stands around it is shorter than 78 characters. */
    private static final int MOST = 56;
    private static final String PLAIN = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-._~";

    private FileName() {
    }

    /** With what parts it from the value before; a short one in ASCII as it is, any other encoded and in pieces. */
    static String parameter(String name) {
        if (name.length() <= MOST && StandardCharsets.US_ASCII.newEncoder().canEncode(name)) {
            return ";\r\n\tfilename=\"" + name + "\"";
        }
        StringBuilder all = new StringBuilder();
        StringBuilder piece = new StringBuilder("UTF-8''");
        int pieces = 0;
        for (byte sign : name.getBytes(StandardCharsets.UTF_8)) {
            piece.append(encoded(sign));
            if (piece.length() >= MOST) {
                all.append(piece(pieces++, piece));
                piece.setLength(0);
            }
        }
        return all + (piece.isEmpty() ? "" : piece(pieces, piece));
    }

    private static String piece(int number, CharSequence encoded) {
        return ";\r\n\tfilename*" + number + "*=" + encoded;
    }

    private static String encoded(byte sign) {
        return PLAIN.indexOf(sign) >= 0 ? String.valueOf((char) sign) : String.format("%%%02X", sign);
    }
}
