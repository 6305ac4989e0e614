package icequill.render.pdf;

import icequill.files.disk.Hash;
import icequill.render.words.Family;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Takes chance out of a file, so that the same paper gives the same bytes. The library draws six random letters for each font
 * and a random document id; here the letters count up and the id follows from the content. Lengths stay, so that nothing in
 * the file moves.
 */
final class FixedIds {

    private static final Pattern FONT = Pattern.compile("/([A-Z]{6})\\+("
            + Arrays.stream(Family.values()).map(family -> family.style().replace(" ", ""))
                    .collect(Collectors.joining("|"))
            + ")");
    private static final Pattern ID = Pattern.compile("/ID ?\\[<([0-9A-Fa-f]{32})><([0-9A-Fa-f]{32})>\\]");
    private static final int LETTERS = 26;

    private FixedIds() {
    }

    static byte[] in(byte[] file) {
        // Every byte is one character here, so positions are the file's own.
        String text = new String(file, StandardCharsets.ISO_8859_1);
        Map<String, String> prefixes = new LinkedHashMap<>();
        String named = FONT.matcher(text).replaceAll(found -> "/"
                + prefixes.computeIfAbsent(found.group(1), old -> prefix(prefixes.size())) + "+" + found.group(2));
        Matcher id = ID.matcher(named);
        if (!id.find()) {
            throw new IllegalStateException("a file without an id");
        }
        String without = named.substring(0, id.start(1)) + named.substring(id.end(2));
        String fixed = Hash.of(without.getBytes(StandardCharsets.ISO_8859_1)).substring(0, id.group(1).length());
        return (named.substring(0, id.start(1)) + fixed + "><" + fixed + named.substring(id.end(2)))
                .getBytes(StandardCharsets.ISO_8859_1);
    }

    private static String prefix(int number) {
        return "ICEQ" + (char) ('A' + number / LETTERS) + (char) ('A' + number % LETTERS);
    }
}
