package icequill.office.register;

import icequill.answer.ImportResult;
import icequill.answer.ImportResult.State;
import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.files.form.StoredForms;
import icequill.ledger.Transaction;
import icequill.office.billing.PendingWrite;
import icequill.office.register.StorableForms.Storable;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.BookForms;
import icequill.shop.ExistingEntries;
import icequill.shop.GlyphCheck;
import icequill.shop.ShopBook;
import icequill.shop.ShopDay;
import icequill.shop.ShopFolder;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.LongConsumer;

/** The office that takes forms and lists into the book: all of them, or none. */
public final class ImportOffice {

    private final ShopBook book;

    private ImportOffice(ShopBook book) {
        this.book = book;
    }

    public static ImportOffice of(Path folder, Clock clock) {
        return of(ShopBook.of(folder, clock));
    }

    /** The same with a book that may be held open. */
    public static ImportOffice of(ShopBook book) {
        return new ImportOffice(book);
    }

    /**
     * Takes in what stands in files: YAML forms, one or several in a file, and CSV lists. Whatever has a name that the book knows changes
     * what that says; the rest is new. Nothing is stored where anything is wrong, and what was billed is not changed.
     *
     * @param dryRun whether to look only
     */
    public Validated<ImportResult> run(List<Path> files, boolean dryRun) {
        return run(files, dryRun, count -> {
        });
    }

    /** The same, and tells how many forms were looked at; what it is told by may end the work with an exception, and nothing is stored. */
    public Validated<ImportResult> run(List<Path> files, boolean dryRun, LongConsumer progress) {
        if (files.isEmpty()) {
            return Validated.invalid(new Problem(Code.MISSING, Place.NOWHERE, "no file is given",
                    "files of forms (.yaml) or lists (.csv)"));
        }
        return held(open -> open.taken(handed -> handed.of(files), dryRun, progress));
    }

    /** Takes in forms that stand in no file, all or none. */
    public Validated<ImportResult> take(List<Form> forms) {
        return held(open -> open.taken(handed -> handed.told(forms), false, count -> {
        }));
    }

    /** Opens the book once for all forms; where there is none yet, looking at forms does not make one. */
    private Validated<ImportResult> held(Function<ImportOffice, Validated<ImportResult>> work) {
        return book.exists() ? book.together(open -> work.apply(of(open))) : work.apply(this);
    }

    private Validated<ImportResult> taken(Function<HandedForms, List<Form>> told, boolean dryRun,
            LongConsumer progress) {
        LocalDate today = ShopDay.today(book.folder(), book.clock());
        BookForms source = new BookForms(book);
        ShopFolder bare = source.shop();
        Problems problems = new Problems();
        Validated<ExistingEntries> before = book.exists()
                ? book.read(open -> Validated.valid(ExistingEntries.of(open)))
                : Validated.valid(ExistingEntries.EMPTY);
        return before.then(known -> {
            List<Form> forms = ordered(told.apply(new HandedForms(bare, known, today, problems)), problems);
            ShopFolder shop = bare.with(forms);
            StorableForms storable = new StorableForms(book, shop, today, problems);
            List<Storable> right = new ArrayList<>();
            for (Form form : forms) {
                storable.of(form).ifPresent(right::add);
                progress.accept(right.size());
            }
            return GlyphCheck.report(shop, problems).or(() -> right).then(all -> {
                PendingWrite<ImportResult> pending = new PendingWrite<>(book,
                        open -> source.unchanged(open, () -> stored(open, all, dryRun, progress)));
                if (!dryRun) {
                    return pending.done();
                }
                return book.exists() ? pending.tried() : Validated.valid(allNew(all));
            });
        });
    }

    private static Validated<ImportResult> stored(Transaction open, List<Storable> all, boolean dryRun,
            LongConsumer progress) {
        Problems problems = new Problems();
        List<ImportResult.Taken> taken = new ArrayList<>();
        for (Storable form : all) {
            progress.accept(all.size());
            problems.take(form.store().apply(open))
                    .ifPresent(state -> taken.add(new ImportResult.Taken(form.kind(), form.id(), state)));
        }
        return problems.or(() -> new ImportResult(taken, dryRun));
    }

    private static ImportResult allNew(List<Storable> all) {
        return new ImportResult(
                all.stream().map(form -> new ImportResult.Taken(form.kind(), form.id(), State.NEW)).toList(), true);
    }

    /** Those that forms may name come first: by kind, and accounts before the customers that belong to them. */
    private static List<Form> ordered(List<Form> forms, Problems problems) {
        List<Form> ordered = new ArrayList<>();
        List<Form> left = new ArrayList<>(forms.stream().filter(form -> isCustomer(form)).toList());
        while (!left.isEmpty()) {
            Set<String> waiting = new HashSet<>(left.stream().map(Form::id).toList());
            List<Form> next = left.stream()
                    .filter(form -> form.text(StoredForms.PARENT_KEY).filter(waiting::contains).isEmpty()).toList();
            if (next.isEmpty()) {
                problems.add(Code.NOT_ALLOWED, left.getFirst().tree().place(),
                        "these accounts belong to each other: " + String.join(", ", waiting.stream().sorted().toList()),
                        "an account that is not below itself");
                return List.of();
            }
            ordered.addAll(next);
            left.removeAll(next);
        }
        forms.stream().filter(form -> !isCustomer(form)).sorted(Comparator.comparing(form -> form.kind().orElseThrow()))
                .forEach(ordered::add);
        return ordered;
    }

    private static boolean isCustomer(Form form) {
        return form.kind().filter(kind -> kind == FormKind.CUSTOMER).isPresent();
    }
}
