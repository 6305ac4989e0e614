package icequill.files;

import icequill.problem.Check;
import icequill.problem.Checked;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
 * Reads one YAML file. Size and depth are limited and anchors are refused, so that no file, however it was made, can hold the
 * program up.
 */
final class YamlReader {

    private static final long MOST_BYTES = 1_000_000;
    private static final int MOST_LEVELS = 20;

    private final String name;
    private final Problems problems = new Problems();

    private YamlReader(String name) {
        this.name = name;
    }

    /** @param name the file's name as problems are to show it */
    static Checked<Tree> read(Path file, String name) {
        return text(file, name).then(text -> new YamlReader(name).parse(text));
    }

    private static Checked<String> text(Path file, String name) {
        Place place = Place.ofFile(name);
        try {
            long size = Files.size(file);
            if (size > MOST_BYTES) {
                return Checked.faulty(new Problem(Code.TOO_LARGE, place, "the file has " + size + " bytes",
                        "at most " + MOST_BYTES));
            }
            ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(file));
            String text = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT).decode(bytes).toString();
            return Checked.sound(text.startsWith("\uFEFF") ? text.substring(1) : text);
        } catch (NoSuchFileException missing) {
            return Checked.faulty(new Problem(Code.UNREADABLE, place, "there is no such file", ""));
        } catch (CharacterCodingException notUtf8) {
            return Checked.faulty(new Problem(Code.UNREADABLE, place, "the file is not in UTF-8", "save it as UTF-8"));
        } catch (IOException unreadable) {
            return Checked.faulty(new Problem(Code.UNREADABLE, place, "the file cannot be read: " + unreadable, ""));
        }
    }

    private Checked<Tree> parse(String text) {
        LoadSettings settings = LoadSettings.builder().setAllowDuplicateKeys(true).setAllowNonScalarKeys(false)
                .setCodePointLimit((int) MOST_BYTES).setMaxAliasesForCollections(0).build();
        try {
            List<Node> documents = new ArrayList<>();
            new Compose(settings).composeAllFromString(text).forEach(documents::add);
            if (documents.isEmpty()) {
                return Checked.faulty(new Problem(Code.UNREADABLE, Place.ofFile(name), "the file is empty", ""));
            }
            if (documents.size() > 1) {
                return Checked.faulty(new Problem(Code.UNREADABLE, place(documents.get(1), ""),
                        "a second document begins", "one document in a file: remove the line ---"));
            }
            Optional<Tree> tree = tree(documents.getFirst(), "", 1);
            return problems.or(tree::orElseThrow);
        } catch (MarkedYamlEngineException broken) {
            int line = broken.getProblemMark().map(mark -> mark.getLine() + 1).orElse(0);
            return Checked.faulty(new Problem(Code.UNREADABLE, new Place(name, line, ""),
                    "not YAML: " + broken.getProblem(), "check quotes, colons and indentation by spaces"));
        } catch (YamlEngineException broken) {
            return Checked
                    .faulty(new Problem(Code.UNREADABLE, Place.ofFile(name), "not YAML: " + broken.getMessage(), ""));
        } catch (StackOverflowError deep) {
            return Checked
                    .faulty(new Problem(Code.TOO_LARGE, Place.ofFile(name), "the lists and keys are nested too deep",
                            "at most " + MOST_LEVELS + " levels"));
        }
    }

    private Optional<Tree> tree(Node node, String path, int level) {
        Place place = place(node, path);
        if (node.getAnchor().isPresent()) {
            problems.add(Code.NOT_ALLOWED, place, "an anchor \"&" + node.getAnchor().get().getValue() + "\"",
                    "write the value out at each place");
            return Optional.empty();
        }
        if (level > MOST_LEVELS) {
            problems.add(Code.TOO_LARGE, place, "nested " + level + " levels deep",
                    "at most " + MOST_LEVELS + " levels");
            return Optional.empty();
        }
        return switch (node) {
        case MappingNode map -> Optional.of(branch(map, place, level));
        case SequenceNode list -> Optional.of(row(list, place, level));
        case ScalarNode scalar -> Optional.of(leaf(scalar, place));
        default -> throw new IllegalStateException("not a kind of YAML node: " + node);
        };
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
        return new Tree.Leaf(scalar.getValue(), kind, place);
    }

    private Place place(Node node, String path) {
        int line = node.getStartMark().map(Mark::getLine).orElse(-1) + 1;
        Check.that(line >= 0, "a line before the first");
        return new Place(name, line, path);
    }
}
