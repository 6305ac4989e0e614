package icequill.files.form;

import icequill.files.yaml.Column;
import icequill.files.yaml.Fields;
import icequill.files.yaml.GivenValue;
import icequill.files.yaml.SchemaCheck;
import icequill.files.yaml.Tree;
import icequill.files.yaml.TreeJson;
import icequill.files.yaml.ValueTree;
import icequill.files.yaml.YamlReader;
import icequill.party.Contact;
import icequill.party.Customer;
import icequill.party.Machine;
import icequill.party.Site;
import icequill.party.SiteKinds;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problems;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * Sites and machines outside the shop folder's files: from single values, and as JSON on one line with the keys of a site's
 * file. Whatever is wrong is collected where the forms come from.
 */
public final class StoredForms {

    static final String SITE = "/icequill/schema/site.schema.json";
    public static final String CUSTOMER_KEY = "customer";
    /** The account that a customer belongs to. */
    public static final String PARENT_KEY = "parent";
    public static final String MACHINES_KEY = "machines";

    private final Problems problems;
    private final Consumer<Tree> note;
    private final SiteKinds kinds;

    public StoredForms(SiteKinds kinds, Problems problems, Consumer<Tree> note) {
        this.kinds = kinds;
        this.problems = problems;
        this.note = note;
    }

    /**
     * A site as it is and as it is stored.
     *
     * @param data of the site without customer and machines
     * @param machines each in that form, by id
     */
    public record Whole(Site site, String data, Map<String, String> machines) {
        public Whole {
            machines = new LinkedHashMap<>(machines);
        }
    }

    /** A machine of a list, before it is known whether it is right. */
    public record Given(String id, Map<Column, GivenValue> values, Place place) {}

    /**
     * A site as the book holds it.
     *
     * @param id that it has now, which a merge may have changed
     * @param accounts the customer's id, then those of the accounts above him
     * @param data of the site itself
     * @param machines each by itself
     */
    public record Stored(String id, Customer customer, List<String> accounts, String data, List<String> machines) {
        public Stored {
            accounts = List.copyOf(accounts);
            machines = List.copyOf(machines);
        }
    }

    /** The site as it was stored. */
    public Optional<Site> site(Stored stored) {
        String id = stored.id();
        Tree.Branch tree = whole(siteTree(id, stored.data()), stored.machines().stream()
                .map(machine -> tree(machine, "the book's machine at " + id)).toList());
        return checked(tree).read(id, stored.customer()).map(site -> site.of(stored.accounts()));
    }

    /**
     * A site with values laid over what is stored of it.
     *
     * @param customer who pays; empty where he has problems of his own
     * @param before as it is stored; empty for a new one
     * @param kept machines as they are stored, by id
     * @param machines with values laid over what is kept; new where nothing is
     * @return empty when something needed is missing or wrong, which is then reported
     */
    public Optional<Whole> site(String id, Optional<Customer> customer, Map<Column, GivenValue> values, Place place,
            Optional<String> before, Map<String, String> kept, List<Given> machines) {
        Tree.Branch site = ValueTree.over(before.map(data -> siteTree(id, data))
                .orElseGet(() -> ValueTree.empty(place)), values);
        Map<String, Tree.Branch> all = new LinkedHashMap<>();
        kept.forEach((machine, data) -> all.put(machine, tree(data, "the book's machine at " + id)));
        machines.forEach(given -> all.put(given.id(), machine(given, Optional.ofNullable(all.get(given.id())))));
        Tree.Branch tree = whole(site, all.values().stream().toList());
        int found = problems.count();
        Optional<Site> read = checked(tree).read(id, customer.orElse(SiteReader.UNKNOWN));
        return read.filter(valid -> problems.count() == found && customer.isPresent())
                .map(valid -> whole(valid, tree));
    }

    private static Tree.Branch machine(Given given, Optional<Tree.Branch> before) {
        Column id = Column.text("id");
        Map<Column, GivenValue> values = new LinkedHashMap<>();
        values.put(id, new GivenValue(given.id(), given.place()));
        values.putAll(given.values());
        return ValueTree.over(before.orElseGet(() -> ValueTree.empty(given.place())), values);
    }

    /** A site that was read from a file, as it is stored. */
    public static Whole whole(Site site, Tree.Branch tree) {
        Map<String, Tree> own = new LinkedHashMap<>(tree.entries());
        own.keySet().removeAll(Set.of(Form.KIND_KEY, Form.ID_KEY, "format", CUSTOMER_KEY, MACHINES_KEY));
        Map<String, String> machines = new LinkedHashMap<>();
        if (tree.entries().get(MACHINES_KEY) instanceof Tree.Row row) {
            List<Machine> read = site.machines();
            for (int i = 0; i < read.size(); i++) {
                machines.put(read.get(i).id(), TreeJson.text(row.items().get(i)));
            }
        }
        return new Whole(site, TreeJson.text(new Tree.Branch(own, tree.keys(), tree.place())), machines);
    }

    /** Whom to turn to at a site, as it is stored. */
    public static List<Contact> contacts(String data) {
        return SiteReader.contacts(new Fields(siteTree("", data), new Problems())).people();
    }

    /** A form in which something is stored, for another site. */
    public static String at(String site, String data) {
        Tree.Branch form = tree(data, "the book's form");
        Map<String, Tree> entries = new LinkedHashMap<>(form.entries());
        entries.put("site", Tree.Leaf.of(site, Tree.Leaf.Kind.TEXT, form.place()));
        return TreeJson.text(new Tree.Branch(entries, form.keys(), form.place()));
    }

    /** An agreement's form with another site in place of one, also among several. */
    public static String moved(String from, String into, String data) {
        return TreeJson.text(moved(from, into, tree(data, "the book's form")));
    }

    private static Tree moved(String from, String into, Tree tree) {
        return switch (tree) {
        case Tree.Branch branch -> {
            Map<String, Tree> entries = new LinkedHashMap<>();
            branch.entries().forEach((key, value) -> entries.put(key, key.equals("site")
                    && value instanceof Tree.Leaf leaf && leaf.text().equals(from)
                            ? Tree.Leaf.of(into, Tree.Leaf.Kind.TEXT, leaf.place())
                            : moved(from, into, value)));
            yield new Tree.Branch(entries, branch.keys(), branch.place());
        }
        case Tree.Row row -> new Tree.Row(row.items().stream().map(item -> moved(from, into, item)).toList(),
                row.place());
        case Tree.Leaf leaf -> leaf;
        };
    }

    /** A site's form, held against its schema; who pays is looked at by itself, since he may stand there or be named. */
    public Optional<Fields> site(Tree tree) {
        if (!(tree instanceof Tree.Branch branch)) {
            problems.addAll(SchemaCheck.check(tree, SITE));
            return Optional.empty();
        }
        Tree who = branch.entries().get(CUSTOMER_KEY);
        problems.addAll(who == null
                ? SchemaCheck.check(branch, SITE)
                : SchemaCheck.check(Form.without(branch, Set.of(CUSTOMER_KEY)), SITE, "", Set.of(CUSTOMER_KEY)));
        if (who instanceof Tree.Row) {
            problems.add(Code.WRONG_TYPE, who.place(), "found a list",
                    "who pays: the id of a customer, or his own keys");
        }
        return Optional.of(new Fields(branch, problems));
    }

    private SiteReader checked(Tree.Branch tree) {
        note.accept(tree);
        problems.addAll(SchemaCheck.check(tree, SITE, "", Set.of(CUSTOMER_KEY)));
        return new SiteReader(new Fields(tree, problems), kinds);
    }

    private static Tree.Branch siteTree(String id, String data) {
        return tree(data, "the book's site " + id);
    }

    static Tree.Branch tree(String json, String name) {
        return YamlReader.parse(json, name, new Problems())
                .flatMap(tree -> tree instanceof Tree.Branch branch ? Optional.of(branch) : Optional.empty())
                .orElseGet(() -> ValueTree.empty(Place.ofFile(name)));
    }

    private static Tree.Branch whole(Tree.Branch site, List<Tree.Branch> machines) {
        Map<String, Tree> entries = new LinkedHashMap<>();
        entries.put("format", Tree.Leaf.of("1", Tree.Leaf.Kind.NUMBER, site.place()));
        entries.putAll(site.entries());
        entries.put(MACHINES_KEY, new Tree.Row(List.copyOf(machines), site.place()));
        return new Tree.Branch(entries, site.keys(), site.place());
    }
}
