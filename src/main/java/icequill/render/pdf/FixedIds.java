package icequill.render.pdf;

import icequill.files.disk.Hash;
import icequill.render.words.Family;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Takes chance out of a file, so that the same paper gives the same bytes. The library draws six random letters for each font
 * and a random document id; here the letters count up and the id follows from the content. Lengths stay, so that nothing in
 * the file moves.
 */
final class FixedIds {

    private static final List<byte[]> FONTS = Arrays.stream(Family.values())
            .map(family -> bytes("+" + family.style().replace(" ", ""))).toList();
    private static final Pattern ID = Pattern.compile("/ID ?\\[<([0-9A-Fa-f]{32})><([0-9A-Fa-f]{32})>\\]");
    private static final int LETTERS = 26;
    private static final int PREFIX = 6;

    private FixedIds() {
    }

    static byte[] in(byte[] file) {
        byte[] fixed = file.clone();
        nameFonts(fixed);
        identify(fixed);
        return fixed;
    }

    /** Gives the file the id that follows from what else is in it. */
    static void identify(byte[] fixed) {
        int trailer = last(fixed, bytes("/ID"));
        Matcher id = ID.matcher(new String(fixed, trailer, fixed.length - trailer, StandardCharsets.ISO_8859_1));
        if (!id.find()) {
            throw new IllegalStateException("a file without an id");
        }
        byte[] hash = bytes(Hash.of(without(fixed, trailer + id.start(1), trailer + id.end(2))));
        System.arraycopy(hash, 0, fixed, trailer + id.start(1), id.group(1).length());
        System.arraycopy(hash, 0, fixed, trailer + id.start(2), id.group(2).length());
    }

    private static void nameFonts(byte[] file) {
        Map<String, byte[]> prefixes = new LinkedHashMap<>();
        for (int at = PREFIX + 1; at < file.length; at++) {
            if (file[at] == '+' && isPrefix(file, at - PREFIX) && isFont(file, at)) {
                String old = new String(file, at - PREFIX, PREFIX, StandardCharsets.ISO_8859_1);
                byte[] counted = prefixes.computeIfAbsent(old, any -> bytes(prefix(prefixes.size())));
                System.arraycopy(counted, 0, file, at - PREFIX, PREFIX);
            }
        }
    }

    private static boolean isPrefix(byte[] file, int from) {
        for (int at = from; at < from + PREFIX; at++) {
            if (file[at] < 'A' || file[at] > 'Z') {
                return false;
            }
        }
        return file[from - 1] == '/';
    }

    private static boolean isFont(byte[] file, int plus) {
        return FONTS.stream().anyMatch(name -> isAt(file, plus, name));
    }

    private static boolean isAt(byte[] file, int from, byte[] text) {
        return from + text.length <= file.length
                && Arrays.equals(file, from, from + text.length, text, 0, text.length);
    }

    /** Where the text stands last; 0 where it does not. */
    static int last(byte[] file, byte[] text) {
        int at = file.length - text.length;
        while (at > 0 && !isAt(file, at, text)) {
            at--;
        }
        return at;
    }

    private static byte[] without(byte[] file, int from, int to) {
        byte[] rest = Arrays.copyOf(file, file.length - (to - from));
        System.arraycopy(file, to, rest, from, file.length - to);
        return rest;
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }

    private static String prefix(int number) {
        return "ICEQ" + (char) ('A' + number / LETTERS) + (char) ('A' + number % LETTERS);
    }
}
