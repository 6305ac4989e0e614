package icequill.files.form;

import icequill.files.yaml.Tree;
import icequill.files.yaml.TreeJson;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A form as it was written, before it is held against its schema.
 *
 * @param kind what it says it is; empty where it does not say, or says something unknown
 * @param id what it calls itself, or else what its file is called
 */
public record Form(Optional<FormKind> kind, String id, Tree tree) {

    /** Tells the kind. */
    public static final String KIND_KEY = "form";
    /** Of an agreement over several sites. */
    public static final String SITES = "sites";
    /** Tells what it is called. */
    public static final String ID_KEY = "id";

    /**
     * A form as it was read.
     *
     * @param name what it is called where it does not say so itself
     */
    public static Form of(Tree tree, String name) {
        return new Form(text(tree, KIND_KEY).flatMap(FormKind::of), text(tree, ID_KEY).orElse(name), tree);
    }

    /** One that was stored by {@link #data()}. */
    public static Form stored(FormKind kind, String id, String data) {
        return new Form(Optional.of(kind), id, TreeJson.branch(data, "the book's " + kind.words() + " " + id));
    }

    /** What it says, as JSON on one line, without its kind and what it is called. */
    public String data() {
        return tree instanceof Tree.Branch branch ? TreeJson.text(without(branch, Set.of(KIND_KEY, ID_KEY))) : "";
    }

    /** A text of the first level. */
    public Optional<String> text(String key) {
        return text(tree, key);
    }

    /** Whether it is for a site, alone or among several. */
    public boolean isForSite(String site) {
        return text("site").filter(site::equals).isPresent() || (tree instanceof Tree.Branch branch
                && branch.entries().get(SITES) instanceof Tree.Row sites
                && sites.items().stream().anyMatch(one -> text(one, "site").filter(site::equals).isPresent()));
    }

    /** A tree less some of its keys. */
    static Tree.Branch without(Tree.Branch tree, Set<String> keys) {
        Map<String, Tree> kept = new LinkedHashMap<>(tree.entries());
        kept.keySet().removeAll(keys);
        return new Tree.Branch(kept, tree.keys(), tree.place());
    }

    private static Optional<String> text(Tree tree, String key) {
        return tree instanceof Tree.Branch branch && branch.entries().get(key) instanceof Tree.Leaf leaf
                && leaf.kind() == Tree.Leaf.Kind.TEXT ? Optional.of(leaf.text()) : Optional.empty();
    }
}
