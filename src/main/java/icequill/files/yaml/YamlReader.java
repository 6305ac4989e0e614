package icequill.files.yaml;

import icequill.problem.Check;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/**
 * Reads one YAML file. Size and depth are limited, and anchors, aliases and tags are refused, so that no file, however it was
 * made, can hold the program up. What can be read past a fault is read, so that the rest of the file is checked in the same run.
 */
public final class YamlReader {

    private static final int MOST_BYTES = 1_000_000;
    private static final int MOST_BYTES_OF_SEVERAL = 20_000_000;
    private static final int MOST_LEVELS = 20;

    /** Longer than any file of rates; what is longer is read anew, so that no more than some megabytes are ever kept. */
    private static final int LONGEST_KEPT = 50_000;
    private static final Remembered<Asked, Outcome> KNOWN = new Remembered<>(Remembered.FILES);

    /** What YAML itself takes values for, without being told. */
    private static final Set<Tag> PLAIN = Set.of(Tag.MAP, Tag.SEQ, Tag.STR, Tag.INT, Tag.FLOAT, Tag.BOOL, Tag.NULL);

    /**
     * A text to read.
     *
     * @param name of its file, as places show it
     * @param isSeveral whether more than one document may stand in it
     */
    private record Asked(String text, String name, boolean isSeveral) {

        Outcome outcome() {
            Problems found = new Problems();
            YamlReader reader = new YamlReader(name, found, isSeveral ? MOST_BYTES_OF_SEVERAL : MOST_BYTES);
            List<Tree> trees = isSeveral
                    ? reader.documents(text).stream().flatMap(node -> reader.tree(node, "", 1).stream()).toList()
                    : reader.parse(text).stream().toList();
            return new Outcome(trees, found.list());
        }
    }

    /** What a text came to, and what is wrong with it. */
    private record Outcome(List<Tree> trees, List<Problem> problems) {}

    private final String name;
    private final Problems problems;
    private final int most;
    /** An alias brings the same node again, with all that is in it, and an alias within that as well. */
    private final Set<Node> met = Collections.newSetFromMap(new IdentityHashMap<>());

    private YamlReader(String name, Problems problems, int most) {
        this.name = name;
        this.problems = problems;
        this.most = most;
    }

    /**
     * Empty when nothing can be made of the file.
     *
     * @param name the file's name as problems are to show it
     * @param problems what is wrong is added here
     */
    public static Optional<Tree> read(Path file, String name, Problems problems) {
        return new YamlReader(name, problems, MOST_BYTES).text(file).flatMap(text -> parse(text, name, problems));
    }

    /** The same for a file that may hold several documents, one after the other. */
    public static List<Tree> readAll(Path file, String name, Problems problems) {
        return new YamlReader(name, problems, MOST_BYTES_OF_SEVERAL).text(file)
                .map(text -> outcome(new Asked(text, name, true), problems)).orElse(List.of());
    }

    /** The same for a text that stands in no file. */
    public static Optional<Tree> parse(String text, String name, Problems problems) {
        return outcome(new Asked(text, name, false), problems).stream().findFirst();
    }

    private static List<Tree> outcome(Asked asked, Problems problems) {
        Outcome outcome = asked.text().length() > LONGEST_KEPT
                ? asked.outcome()
                : KNOWN.of(asked, asked::outcome);
        problems.addAll(outcome.problems());
        return outcome.trees();
    }

    private Optional<String> text(Path file) {
        if (FolderFiles.isEndless(file)) {
            return none(Code.UNREADABLE, "it is no ordinary file", "a file of text, no pipe and no folder");
        }
        try (InputStream stream = Files.newInputStream(file)) {
            byte[] bytes = stream.readNBytes(most + 1);
            if (bytes.length > most) {
                return none(Code.TOO_LARGE, "the file has " + Math.max(bytes.length, Files.size(file)) + " bytes",
                        "at most " + most);
            }
            String text = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT).decode(ByteBuffer.wrap(bytes)).toString();
            return Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
        } catch (NoSuchFileException missing) {
            return none(Code.UNREADABLE, "there is no such file", "");
        } catch (CharacterCodingException notUtf8) {
            return none(Code.UNREADABLE, "the file is not in UTF-8", "save it as UTF-8");
        } catch (IOException unreadable) {
            return none(Code.UNREADABLE, "the file cannot be read: " + unreadable, "a file that may be read");
        }
    }

    private Optional<Tree> parse(String text) {
        List<Node> documents = documents(text);
        if (documents.size() > 1) {
            problems.add(Code.UNREADABLE, place(documents.get(1), ""), "a second document begins",
                    "one document in a file: remove the line ---");
            return Optional.empty();
        }
        return documents.stream().findFirst().flatMap(document -> tree(document, "", 1));
    }

    /** Never empty, unless that was reported. */
    private List<Node> documents(String text) {
        LoadSettings settings = LoadSettings.builder().setAllowDuplicateKeys(true).setAllowNonScalarKeys(false)
                .setCodePointLimit(most).setMaxAliasesForCollections(0).build();
        List<Node> documents = new ArrayList<>();
        try {
            new Compose(settings).composeAllFromString(text).forEach(documents::add);
            if (documents.isEmpty()) {
                problems.add(Code.UNREADABLE, Place.ofFile(name), "the file is empty", "keys and values");
            }
            return documents;
        } catch (MarkedYamlEngineException broken) {
            int line = broken.getProblemMark().map(mark -> mark.getLine() + 1).orElse(0);
            problems.add(Code.UNREADABLE, new Place(name, line, ""), "not YAML: " + broken.getProblem(),
                    "check quotes, colons and indentation by spaces");
        } catch (YamlEngineException broken) {
            problems.add(Code.UNREADABLE, Place.ofFile(name), "not YAML: " + broken.getMessage(), "");
        } catch (StackOverflowError deep) {
            problems.add(Code.TOO_LARGE, Place.ofFile(name), "the lists and keys are nested too deep",
                    "at most " + MOST_LEVELS + " levels");
        }
        return List.of();
    }

    private <T> Optional<T> none(Code code, String message, String allowed) {
        problems.add(code, Place.ofFile(name), message, allowed);
        return Optional.empty();
    }

    private Optional<Tree> tree(Node node, String path, int level) {
        Place place = place(node, path);
        if (!met.add(node)) {
            problems.add(Code.NOT_ALLOWED, place, "an alias stands for this a second time",
                    "write the value out at each place");
            return Optional.empty();
        }
        if (level > MOST_LEVELS) {
            problems.add(Code.TOO_LARGE, place, "nested " + level + " levels deep",
                    "at most " + MOST_LEVELS + " levels");
            return Optional.empty();
        }
        node.getAnchor().ifPresent(anchor -> problems.add(Code.NOT_ALLOWED, place,
                "an anchor \"&" + anchor.getValue() + "\"", "write the value out at each place"));
        if (!PLAIN.contains(node.getTag())) {
            problems.add(Code.NOT_ALLOWED, place, "a tag \"" + node.getTag().getValue() + "\"",
                    "the value alone");
        }
        return Optional.of(switch (node) {
        case MappingNode map -> branch(map, place, level);
        case SequenceNode list -> row(list, place, level);
        case ScalarNode scalar -> leaf(scalar, place);
        default -> throw new IllegalStateException("not a kind of YAML node: " + node);
        });
    }

    private Tree branch(MappingNode map, Place place, int level) {
        Map<String, Tree> entries = new LinkedHashMap<>();
        Map<String, Place> keys = new LinkedHashMap<>();
        for (NodeTuple tuple : map.getValue()) {
            String key = tuple.getKeyNode() instanceof ScalarNode scalar ? scalar.getValue() : "?";
            String path = place.path().isEmpty() ? key : place.path() + "." + key;
            Place keyPlace = place(tuple.getKeyNode(), path);
            if (entries.containsKey(key)) {
                problems.add(Code.DUPLICATE_KEY, keyPlace, "the key \"" + key + "\" stands here a second time",
                        "each key once");
            } else {
                tree(tuple.getValueNode(), path, level + 1).ifPresent(value -> {
                    entries.put(key, value);
                    keys.put(key, keyPlace);
                });
            }
        }
        return new Tree.Branch(entries, keys, place);
    }

    private Tree row(SequenceNode list, Place place, int level) {
        List<Tree> items = new ArrayList<>();
        for (int i = 0; i < list.getValue().size(); i++) {
            tree(list.getValue().get(i), place.path() + "[" + i + "]", level + 1).ifPresent(items::add);
        }
        return new Tree.Row(items, place);
    }

    private Tree leaf(ScalarNode scalar, Place place) {
        Tag tag = scalar.getTag();
        Tree.Leaf.Kind kind;
        if (tag.equals(Tag.INT) || tag.equals(Tag.FLOAT)) {
            kind = Tree.Leaf.Kind.NUMBER;
        } else if (tag.equals(Tag.BOOL)) {
            kind = Tree.Leaf.Kind.TRUTH;
        } else if (tag.equals(Tag.NULL)) {
            kind = Tree.Leaf.Kind.NOTHING;
        } else {
            kind = Tree.Leaf.Kind.TEXT;
        }
        return Tree.Leaf.of(scalar.getValue(), kind, place);
    }

    private Place place(Node node, String path) {
        int line = node.getStartMark().map(Mark::getLine).orElse(-1) + 1;
        Check.that(line >= 0, "a line before the first");
        return new Place(name, line, path);
    }
}
