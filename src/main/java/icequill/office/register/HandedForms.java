package icequill.office.register;

import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.files.yaml.ShippedMarks;
import icequill.files.yaml.Tree;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.entries.SiteEntry;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.shop.EntryId;
import icequill.shop.ExistingEntries;
import icequill.shop.ShopFolder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The forms in files that are handed over, each of a kind that a book takes in, and under a name of its own. */
record HandedForms(ShopFolder shop, ExistingEntries before, LocalDate today, Problems problems) {

    private static final String CUSTOMER = "customer";
    private static final String NAME = "name";

    /** All forms in the order in which they are to be taken in: each after those that it names. */
    List<Form> of(List<Path> files) {
        List<Path> lists = files.stream().filter(HandedForms::isList).toList();
        List<Form> forms = new ArrayList<>(
                ListForms.of(shop, before, ImportLists.read(lists, problems), today, problems));
        files.stream().filter(file -> Files.isRegularFile(file) && !isList(file)).forEach(file -> ShippedMarks
                .in(file, file.toString()).stream().map(ShippedMarks::problem).forEach(problems::add));
        files.stream().filter(file -> !isList(file)).flatMap(file -> shop.forms(file).stream())
                .filter(this::isTaken).flatMap(form -> parted(form).stream()).forEach(forms::add);
        return distinct(forms);
    }

    /** The same of forms that stand in no file. */
    List<Form> told(List<Form> forms) {
        return distinct(
                forms.stream().filter(this::isTaken).flatMap(form -> parted(form).stream()).toList());
    }

    private static boolean isList(Path file) {
        return file.toString().toLowerCase(Locale.ROOT).endsWith(".csv");
    }

    private boolean isTaken(Form form) {
        Optional<Problem> wrong = EntryId.problem(form.id(), form.tree().place());
        wrong.ifPresent(problems::add);
        return wrong.isEmpty();
    }

    /** A site whose form tells who pays gives a form of the customer too, and names him. */
    private List<Form> parted(Form form) {
        if (form.kind().filter(kind -> kind == FormKind.SITE).isEmpty()
                || !(form.tree() instanceof Tree.Branch site)
                || !(site.entries().get(CUSTOMER) instanceof Tree.Branch payer)) {
            return List.of(form);
        }
        Form told = Form.of(payer, "");
        String id = told.id().isEmpty() ? known(form.id(), told).orElseGet(() -> EntryId.of(name(told))) : told.id();
        Map<String, Tree> named = new LinkedHashMap<>(site.entries());
        named.put(CUSTOMER, Tree.Leaf.of(id, Tree.Leaf.Kind.TEXT, payer.place()));
        return List.of(new Form(Optional.of(FormKind.CUSTOMER), id, payer),
                new Form(form.kind(), form.id(), new Tree.Branch(named, site.keys(), site.place())));
    }

    private static String name(Form customer) {
        return customer.text(NAME).orElse("");
    }

    /** The customer that the book has for the site, where he is called the same. */
    private Optional<String> known(String site, Form customer) {
        return Optional.ofNullable(before.sites().get(site)).map(SiteEntry::customer)
                .filter(id -> Optional.ofNullable(before.customers().get(id)).map(CustomerEntry::customer)
                        .filter(known -> known.name().equals(name(customer))).isPresent());
    }

    /** Each once; two that differ under one name are a problem. */
    private List<Form> distinct(List<Form> forms) {
        Map<String, Form> met = new LinkedHashMap<>();
        for (Form form : forms) {
            FormKind kind = form.kind().orElseThrow();
            Form first = met.putIfAbsent(kind.storedAs() + " " + form.id(), form);
            if (first != null && (!first.kind().equals(form.kind()) || !first.data().equals(form.data()))) {
                problems.add(Code.DUPLICATE_NAME, form.tree().place(), kind.words() + " \"" + form.id()
                        + "\" stands here a second time, and differs from " + first.tree().place().reference(),
                        "one form for each");
            }
        }
        return List.copyOf(met.values());
    }
}
