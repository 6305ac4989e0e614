package icequill.answer;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The file of a paper, byte for byte as it was issued.
 *
 * @param hash SHA-256, in hexadecimal digits
 * @param printed whether it had to be printed again
 * @param aside where the file lies now that stood in its place and was not the same
 */
public record Reprint(String number, Path file, String hash, boolean printed, Optional<Path> aside) {

    public Map<String, Object> json() {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("number", number);
        view.put("file", file.toString());
        view.put("sha256", hash);
        view.put("printed", printed);
        aside.ifPresent(changed -> view.put("aside", changed.toString()));
        return view;
    }
}
