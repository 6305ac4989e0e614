package icequill.cli;

import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import picocli.CommandLine;

/** The program's commands as they stand in its own model, and lines of them as people write them. */
final class CommandLines {

    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
    /** What is said of an example stands two spaces from it. */
    private static final Pattern REMARK = Pattern.compile("(?<=\\S) {2,}.*");
    private static final Pattern REDIRECTED = Pattern.compile(" > .*");

    private static final List<CommandLine> ALL = collected();

    private CommandLines() {
    }

    /** Every command that does something; to look at, not to run. */
    static List<CommandLine> all() {
        return ALL;
    }

    private static List<CommandLine> collected() {
        List<CommandLine> found = new ArrayList<>();
        collect(Main.commands(Clock.systemUTC()), found);
        return List.copyOf(found);
    }

    private static void collect(CommandLine line, List<CommandLine> found) {
        List<CommandLine> verbs = line.getSubcommands().values().stream()
                .filter(verb -> !verb.getCommandName().equals("help")).toList();
        if (verbs.isEmpty() || line.getCommandName().equals("audit")) {
            found.add(line);
        }
        verbs.forEach(verb -> collect(verb, found));
    }

    /** As it is typed, without the program's name. */
    static String name(CommandLine command) {
        return command.getCommandSpec().qualifiedName().replaceFirst("^icequill ?", "");
    }

    /** The examples of its help. */
    static List<String> examples(CommandLine command) {
        return Stream.of(command.getCommandSpec().usageMessage().footer()).map(String::strip)
                .filter(line -> line.startsWith("icequill "))
                .map(line -> REDIRECTED.matcher(REMARK.matcher(line).replaceAll("")).replaceAll("")).toList();
    }

    /** The words of a line, without the program's name. */
    static String[] words(String line) {
        List<String> words = new ArrayList<>();
        Matcher matcher = WORD.matcher(line);
        while (matcher.find()) {
            words.add(matcher.group(1) == null ? matcher.group(2) : matcher.group(1));
        }
        return Arrays.copyOfRange(words.toArray(String[]::new), 1, words.size());
    }
}
