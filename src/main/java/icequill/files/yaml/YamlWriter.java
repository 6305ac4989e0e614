package icequill.files.yaml;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.snakeyaml.engine.v2.api.Dump;
import org.snakeyaml.engine.v2.api.DumpSettings;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.nodes.Tag;
import org.snakeyaml.engine.v2.representer.StandardRepresenter;

/** Writes keys and values as YAML, a key a line, that {@link YamlReader} reads as the same. */
public final class YamlWriter {

    /** What other readers of YAML may take for a number or a time of day. */
    private static final Pattern LIKE_A_NUMBER = Pattern.compile("[-+.0-9_:]+(?<!^[0-9]{4}-[0-9]{2}-[0-9]{2})");
    private static final DumpSettings SETTINGS = DumpSettings.builder().setDefaultFlowStyle(FlowStyle.BLOCK)
            .setExplicitStart(true).setWidth(Integer.MAX_VALUE).setSplitLines(false).setUseUnicodeEncoding(true)
            .setIndent(2).build();

    private YamlWriter() {
    }

    /**
     * Documents one after the other, each begun by a line of three hyphens.
     *
     * @param documents trees, or maps of lists, texts, truths and numbers
     */
    public static String text(Collection<?> documents) {
        return documents.stream().map(document -> new Dump(SETTINGS, new Representer()).dumpToString(document))
                .collect(Collectors.joining());
    }

    /** Puts into quotes what would be read as text here, and as something else elsewhere; numbers are bare. */
    private static final class Representer extends StandardRepresenter {
        Representer() {
            super(SETTINGS);
            representers.put(String.class, value -> {
                String text = value.toString();
                return representScalar(Tag.STR, text,
                        LIKE_A_NUMBER.matcher(text).matches() ? ScalarStyle.DOUBLE_QUOTED : ScalarStyle.PLAIN);
            });
            representers.put(Tree.Branch.class,
                    value -> representMapping(Tag.MAP, ((Tree.Branch) value).entries(), FlowStyle.BLOCK));
            representers.put(Tree.Row.class,
                    value -> representSequence(Tag.SEQ, ((Tree.Row) value).items(), FlowStyle.BLOCK));
            representers.put(Tree.Leaf.class, value -> representData(((Tree.Leaf) value).value()));
            representers.put(BigDecimal.class, value -> {
                String number = ((BigDecimal) value).toPlainString();
                return representScalar(number.contains(".") ? Tag.FLOAT : Tag.INT, number, ScalarStyle.PLAIN);
            });
        }
    }
}
