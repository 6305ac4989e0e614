package icequill.answer.json;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** The table of the page on JSON that says which commands give which answers. */
public final class AnswersOfCommands {

    private static final Pattern ROW = Pattern.compile("(?m)^\\| \\[([a-z-]+)]\\([^)]*\\) \\| (.*) \\|");
    private static final Pattern COMMAND = Pattern.compile("`([a-z -]+)`");

    private AnswersOfCommands() {
    }

    /** Commands, without their options, by the names of answers. */
    public static Map<String, List<String>> read() throws IOException {
        Map<String, List<String>> table = new LinkedHashMap<>();
        ROW.matcher(Files.readString(Path.of("src/docs/json.md"))).results().forEach(row -> table.put(row.group(1),
                COMMAND.matcher(row.group(2)).results().map((MatchResult command) -> command.group(1)).toList()));
        return table;
    }
}
